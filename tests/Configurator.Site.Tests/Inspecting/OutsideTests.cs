using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

/// <summary>
/// A site that is read beside a machine without a network must not ask for anything, nor tell anybody.
/// </summary>
public class OutsideTests
{
    [Theory]
    [InlineData("img", "src=\"https://example.org/p.png\" alt=\"\"", "https://example.org/p.png")]
    [InlineData("img", "src=\"//example.org/p.png\" alt=\"\"", "//example.org/p.png")]
    [InlineData("img", "src=\"\\\\example.org\\p.png\" alt=\"\"", "\\\\example.org\\p.png")]
    [InlineData("img", "srcset=\"https://example.org/p.png 2x\" alt=\"\"", "https://example.org/p.png")]
    [InlineData("link", "rel=\"stylesheet\" href=\"https://example.org/a.css\"", "https://example.org/a.css")]
    [InlineData("link", "rel=\"preconnect\" href=\"https://example.org\"", "https://example.org")]
    [InlineData("input", "type=\"image\" alt=\"x\" src=\"https://example.org/p.png\"", "https://example.org/p.png")]
    [InlineData("embed", "src=\"https://example.org/x\"", "https://example.org/x")]
    [InlineData("base", "href=\"https://example.org/\"", "https://example.org/")]
    public void Nothing_is_fetched_from_elsewhere(string element, string attributes, string url) =>
        Check($"[|<{element}|] {attributes}>", $"CFG6006 `{url}` is fetched from outside the site");

    [Theory]
    [InlineData("script", "src=\"https://example.org/a.js\"")]
    [InlineData("iframe", "title=\"x\" src=\"https://example.org/\"")]
    [InlineData("object", "data=\"https://example.org/\"")]
    [InlineData("video", "poster=\"https://example.org/\"")]
    [InlineData("form", "action=\"https://example.org/\"")]
    [InlineData("button", "formaction=\"https://example.org/\"")]
    public void Nor_by_elements_with_content(string element, string attributes) => Assert.StartsWith(
        "CFG6006",
        Assert.Single(Inspect(("a.html", Page($"<{element} {attributes}>x</{element}>")))).Rule.Code,
        StringComparison.Ordinal);

    // Source: HTML Living Standard, 4.2.5.3, meta http-equiv="refresh".
    [Theory]
    [InlineData("0; url=https://example.org/")]
    [InlineData("5;URL='https://example.org/'")]
    public void A_page_does_not_send_its_reader_away(string content) => Check(
        $"[|<meta|] http-equiv=\"Refresh\" content=\"{content}\">",
        "CFG6006 `https://example.org/` is fetched from outside the site");

    [Fact]
    public void A_page_may_send_its_reader_to_another_page_of_the_site() => Accept(
        "<meta http-equiv=\"refresh\" content=\"0; url=../index.html\">", ("index.html", Page("", "Start")));

    // Source: URL Living Standard, 4.4: spaces around and tabs within are dropped, schemes have no case.
    [Theory]
    [InlineData("javascript:alert(1)")]
    [InlineData(" JavaScript:alert(1)")]
    [InlineData("java\tscript:alert(1)")]
    [InlineData("&#32;javascript:alert(1)")]
    [InlineData("javascript&colon;alert(1)")]
    [InlineData("data:text/html,x")]
    [InlineData("file:///etc/passwd")]
    [InlineData("http://example.org")]
    [InlineData("//example.org")]
    [InlineData("blob:x")]
    public void A_link_may_only_lead_to_the_site_the_web_mail_or_a_telephone(string href)
    {
        var diagnostic = Assert.Single(Inspect(("a.html", Page($"<a href=\"{href}\">x</a>"))));
        Assert.Equal("CFG6006", diagnostic.Rule.Code);
        Assert.StartsWith("a link may not lead to", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawn_link_is_a_link() => Accept(
        "<svg viewBox=\"0 0 1 1\"><a href=\"https://example.org\"><text>x</text></a></svg>");

    [Fact]
    public void The_address_where_a_page_also_lives_is_not_fetched() =>
        Accept("<link rel=\"canonical\" href=\"https://example.org/a/page.html\">");

    [Fact]
    public void A_picture_inside_the_page_leaves_nothing() =>
        Accept("<img alt=\"\" src=\"data:image/png;base64,AAAA\">");

    // Source: CSS Values 4, 4.5 (url), CSS Syntax 3, 4.3.7 (escapes), CSS Cascade 5, 2 (@import).
    [Theory]
    [InlineData("@import 'https://example.org/a.css';")]
    [InlineData("@import url(https://example.org/a.css) print;")]
    [InlineData("@IMPORT \"//example.org/a.css\";")]
    [InlineData("a { background: url(https://example.org/p.png) }")]
    [InlineData("a { background: URL( 'https://example.org/p.png' ) }")]
    [InlineData("a { background: \\75rl(https://example.org/p.png) }")]
    [InlineData("a { background: image-set(\"https://example.org/p.png\" 2x) }")]
    [InlineData("@font-face { src: url(https://example.org/f.woff2) }")]
    public void Style_sheets_fetch_nothing_from_elsewhere(string css) =>
        Assert.Equal("CFG6006", Assert.Single(Inspect(("assets/site.css", css))).Rule.Code);

    [Theory]
    [InlineData("/* url(https://example.org/p.png) */")]
    [InlineData("a::before { content: \"\\2192\" }")]
    [InlineData("a { background: url(\"data:image/svg+xml,%3Csvg/%3E\") }")]
    [InlineData("a { --source: 1px }")]
    public void Style_sheets_may_have_comments_signs_and_pictures_of_their_own(string css) =>
        Assert.Empty(Inspect(("assets/site.css", css)));

    [Theory]
    [InlineData("<image href=\"https://example.org/p.png\"/>")]
    [InlineData("<use href=\"https://example.org/a.svg#x\"/>")]
    [InlineData("<image xlink:href=\"//example.org/p.png\"/>")]
    public void Drawings_fetch_nothing_from_elsewhere(string content) => Assert.Equal(
        "CFG6006", Assert.Single(
            Inspect(("assets/a.svg", $"<svg xmlns=\"http://www.w3.org/2000/svg\">{content}</svg>"))).Rule.Code);
}
