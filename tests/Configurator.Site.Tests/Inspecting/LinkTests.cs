using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

public class LinkTests
{
    private static readonly (string, string) Index = ("index.html", Page("<h2 id=\"ports\">Ports</h2>", "Start"));

    [Theory]
    [InlineData("../index.html")]
    [InlineData("../index.html#ports")]
    [InlineData("../index.html?from=a#ports")]
    [InlineData("./../a/page.html")]
    [InlineData("page.html")]
    [InlineData("../parts%2Dlist.csv")]
    [InlineData("#here")]
    [InlineData("#")]
    [InlineData("#Top")]
    [InlineData("https://example.org/")]
    [InlineData("mailto:service@example.org")]
    [InlineData("tel:+49301234")]
    public void Links_that_lead_somewhere_are_fine(string href) =>
        Accept($"<p id=\"here\"><a href=\"{href}\">x</a></p>", Index, ("parts-list.csv", "a;b\n"));

    [Fact]
    public void A_link_to_a_missing_file_is_reported_at_its_element() => Check(
        "<p>See\n  [|<a|] href=\"../machines/none.html\">this</a>.</p>",
        "CFG6001 there is no file `machines/none.html`",
        Index);

    [Theory]
    [InlineData("<p>[|<img|] src=\"x.png\" alt=\"\"></p>", "a/x.png")]
    [InlineData("<p>[|<img|] srcset=\"page.html 1x, x.png 2x\" alt=\"\"></p>", "a/x.png")]
    [InlineData("[|<script|] src=\"x.js\"></script>", "a/x.js")]
    [InlineData("<svg viewBox=\"0 0 1 1\">[|<use|] href=\"x.svg#a\"></use></svg>", "a/x.svg")]
    [InlineData("<svg viewBox=\"0 0 1 1\">[|<use|] xlink:href=\"x.svg#a\"></use></svg>", "a/x.svg")]
    public void What_a_page_fetches_must_be_there(string body, string target) =>
        Check(body, $"CFG6001 there is no file `{target}`");

    [Fact]
    public void A_name_in_the_wrong_case_is_broken_and_the_right_one_is_shown() => Assert.Equal(
        "write it in lower case, as the file is: `index.html`",
        Check("[|<a|] href=\"../Index.html\">x</a>", "CFG6001 there is no file `Index.html`", Index).Fix?.Message);

    [Fact]
    public void A_link_out_of_the_sites_folder_is_broken() => Check(
        "[|<a|] href=\"../../other/index.html\">x</a>",
        "CFG6001 `../../other/index.html` leads out of the site's folder");

    [Fact]
    public void An_empty_link_is_broken() => Check("[|<a|] href=\"\">x</a>", "CFG6001 the link is empty");

    [Fact]
    public void A_link_to_a_missing_place_on_another_page_is_reported() => Check(
        "[|<a|] href=\"../index.html#prots\">x</a>", "CFG6002 `index.html` has no element with the id `prots`", Index);

    [Fact]
    public void A_link_to_a_missing_place_on_the_page_itself_is_reported() => Check(
        "[|<a|] href=\"#gone\">x</a>", "CFG6002 `a/page.html` has no element with the id `gone`");

    // An order in the picker travels behind the # as `key=value`; it is no place on the page.
    [Fact]
    public void A_fragment_with_an_equals_sign_is_state_for_a_script() =>
        Accept("<a href=\"#c=1;model=pantry-four\">x</a>");

    [Theory]
    [InlineData("<p [|aria-labelledby=\"gone\">x</p>", "aria-labelledby")]
    [InlineData("<p [|aria-describedby=\"gone\">x</p>", "aria-describedby")]
    [InlineData("<p [|aria-controls=\"gone\">x</p>", "aria-controls")]
    public void Elements_may_only_name_ids_of_their_page(string body, string attribute) => Check(
        "[|<p|]" + body[2..].Replace("[|", "", StringComparison.Ordinal),
        $"CFG6002 `{attribute}` names the id `gone`, which is not on the page");

    // Folders are not resolved when a site is opened from disk.
    [Theory]
    [InlineData("../")]
    [InlineData("..")]
    [InlineData("./")]
    [InlineData("../b/")]
    [InlineData("../b")]
    public void A_link_to_a_folder_is_reported(string href) => Check(
        $"[|<a|] href=\"{href}\">x</a>", $"CFG6010 `{href}` names a folder", Index, ("b/index.html", Page("", "B")));

    [Theory]
    [InlineData("/")]
    [InlineData("/index.html")]
    [InlineData("/index.html#ports")]
    public void A_link_from_the_root_of_a_server_is_reported(string href) => Check(
        $"[|<a|] href=\"{href}\">x</a>",
        $"CFG6010 `{href}` starts at the root of a server",
        Index);

    [Fact]
    public void Style_sheets_are_followed_too()
    {
        var diagnostic = Assert.Single(
            Inspect(("assets/site.css", "/* url(old.png) */\nbody { background: url(\"gone.png\") }\n")));
        Assert.Equal("CFG6001 there is no file `assets/gone.png`", $"{diagnostic.Rule.Code} {diagnostic.Message}");
        Assert.Equal("_site/assets/site.css(2,20)", diagnostic.Span.ToString());
    }

    [Fact]
    public void Drawings_are_followed_too() => Assert.Equal(
        ["_site/assets/a.svg(2,2) there is no file `assets/b.html`"],
        Inspect(
            (
                "assets/a.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\">\n <a href=\"b.html\"><text>x</text></a></svg>\n"))
            .Select(it => $"{it.Span} {it.Message}"));
}
