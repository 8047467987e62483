using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Markup;

public class LinkTests
{
    [Theory]
    [InlineData("[data](../films/foil.html)", "<a href=\"../films/foil.html\">data</a>")]
    [InlineData("[data](foil.html#heat)", "<a href=\"foil.html#heat\">data</a>")]
    [InlineData("[data](#heat)", "<a href=\"#heat\">data</a>")]
    [InlineData("[data](https://example.org/a?b=1)", "<a href=\"https://example.org/a?b=1\">data</a>")]
    [InlineData("<https://example.org>", "<a href=\"https://example.org\">https://example.org</a>")]
    [InlineData("[data](HTTPS://example.org)", "<a href=\"HTTPS://example.org\">data</a>")]
    [InlineData("[write](mailto:service@example.org)", "<a href=\"mailto:service@example.org\">write</a>")]
    [InlineData("[a:b](a/b:c.html)", "<a href=\"a/b:c.html\">a:b</a>")]
    [InlineData("[d](foil.html \"Foil data\")", "<a href=\"foil.html\" title=\"Foil data\">d</a>")]
    [InlineData("![seal](seal.svg)", "<img src=\"seal.svg\" alt=\"seal\">")]
    public void Links_within_the_site_to_the_web_and_to_mail_are_kept(string markdown, string html) =>
        Assert.Equal($"<p>{html}</p>\n", Note.Html(markdown));

    [Theory]
    [InlineData("javascript:alert(1)", "javascript")]
    [InlineData("JaVaScRiPt:alert(1)", "javascript")]
    [InlineData("javascript&colon;alert(1)", "javascript")]
    [InlineData("javascript&#58;alert(1)", "javascript")]
    [InlineData("&#106;avascript:alert(1)", "javascript")]
    [InlineData("vbscript:x", "vbscript")]
    [InlineData("data:text/html,x", "data")]
    [InlineData("file:///etc/passwd", "file")]
    [InlineData("http://example.org/", "http")]
    [InlineData("ftp://example.org/", "ftp")]
    public void Links_of_other_schemes_are_refused_and_their_words_kept(string target, string scheme)
    {
        var note = Note.Read($"See [the *data*]({target}) first.");
        Assert.Equal("<p>See the <em>data</em> first.</p>\n", note.Value.Html);
        Assert.EndsWith(
            $"refused: scheme `{scheme}`", Assert.Single(note.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_link_is_reported_at_its_place_in_the_file() => Assert.Equal(
        "<ul>\n<li>one</li>\n<li>two the data</li>\n</ul>\n",
        Note.Check(
            "- one\n- two [|[the data](javascript:alert(1))|]\n",
            "CFG5102 link `javascript:alert(1)` refused: scheme `javascript`"));

    [Fact]
    public void A_refused_link_in_a_table_is_reported_at_its_place_too() => Note.Check(
        "| a | b |\n|---|---|\n| 1 | [|[data](//example.org)|] |\n",
        "CFG5102 link `//example.org` refused: it does not start at the page");

    [Fact]
    public void A_refused_link_by_reference_is_reported_where_it_is_used() => Note.Check(
        "See [|[data][d]|].\n\n[d]: vbscript:x\n", "CFG5102 link `vbscript:x` refused: scheme `vbscript`");

    [Fact]
    public void A_refused_automatic_link_becomes_its_text() => Assert.Equal(
        "<p>javascript:alert(1)</p>\n",
        Note.Check("[|<javascript:alert(1)>|]", "CFG5102 link `javascript:alert(1)` refused: scheme `javascript`"));

    // Source: URL Living Standard, 4.4: browsers strip control characters and tabs before they look for a scheme.
    [Theory]
    [InlineData("&#1;javascript:alert(1)")]
    [InlineData("java&#9;script:alert(1)")]
    [InlineData("java&#10;script:alert(1)")]
    [InlineData("&#32;javascript:alert(1)")]
    [InlineData("\\\\\\\\example.org\\\\share")]
    public void Targets_with_characters_that_browsers_drop_or_turn_are_refused(string target)
    {
        var note = Note.Read($"[x]({target})");
        Assert.Equal("<p>x</p>\n", note.Value.Html);
        Assert.Equal("CFG5102", Assert.Single(note.Diagnostics).Rule.Code);
    }

    [Theory]
    [InlineData("https://example.org/pixel.png")]
    [InlineData("//example.org/pixel.png")]
    [InlineData("data:image/png;base64,AAAA")]
    public void Pictures_from_outside_are_refused_and_their_text_kept(string source)
    {
        var note = Note.Read($"![the seal]({source})");
        Assert.Equal("<p>the seal</p>\n", note.Value.Html);
        Assert.StartsWith("picture `", Assert.Single(note.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_as_the_words_of_a_refused_link_stays() => Assert.Equal(
        "<p><img src=\"seal.svg\" alt=\"seal\"></p>\n",
        Note.Check(
            "[|[![seal](seal.svg)](javascript:alert(1))|]",
            "CFG5102 link `javascript:alert(1)` refused: scheme `javascript`"));

    [Fact]
    public void A_long_hostile_target_is_shown_short_and_on_one_line()
    {
        var message = Assert.Single(Note.Read($"[x](javascript:{new string('a', 500)}`b)").Diagnostics).Message;
        Assert.InRange(message.Length, 1, 120);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("/index.html")]
    [InlineData("https:example.org")]
    [InlineData("https:///etc")]
    [InlineData("a b.html")]
    public void The_policy_refuses_what_leads_nowhere_or_elsewhere_than_written(string? target) =>
        Assert.NotNull(LinkPolicy.Refusal(target, isImage: false));
}
