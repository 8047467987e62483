namespace Configurator.Site.Tests.Markup;

public class RawHtmlTests
{
    [Fact]
    public void Html_in_a_sentence_is_shown_as_text_and_reported_once_a_line() => Assert.Equal(
        "<p>Use &lt;b&gt;clean&lt;/b&gt; water.</p>\n",
        Note.Check("Use [|<b>|]clean</b> water.\n", "CFG5103 HTML is not read in notes; it is shown as text"));

    [Fact]
    public void A_block_of_html_is_shown_as_text_and_reported_where_it_starts() => Assert.Equal(
        "<p>a</p>\n<p>&lt;script&gt;\nalert(1)\n&lt;/script&gt;</p>\n",
        Note.Check(
            "a\n\n[|<script>|]\nalert(1)\n</script>\n", "CFG5103 HTML is not read in notes; it is shown as text"));

    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("<svg onload=alert(1)/>")]
    [InlineData("<iframe src=\"https://example.org\"></iframe>")]
    [InlineData("<a href=\"javascript:alert(1)\">x</a>")]
    [InlineData("<!-- hidden from the reviewer -->")]
    [InlineData("<style>*{display:none}</style>")]
    [InlineData("<x onclick=alert(1)>")]
    public void No_html_of_a_note_reaches_a_page_as_html(string hostile)
    {
        var note = Note.Read("before " + hostile + " after\n");
        Assert.DoesNotContain("<", note.Value.Html.Replace("<p>", "", StringComparison.Ordinal)
            .Replace("</p>", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(note.Diagnostics, diagnostic => Assert.Equal("CFG5103", diagnostic.Rule.Code));
        Assert.NotEmpty(note.Diagnostics);
    }

    [Theory]
    [InlineData("Less than <5 mm, more than > 3 mm\n")]
    [InlineData("Write `<b>` for bold\n")]
    [InlineData("```\n<b>\n```\n")]
    [InlineData("&lt;b&gt;\n")]
    [InlineData("<svg/onload=alert(1)>\n")]
    public void What_is_no_html_is_not_reported(string markdown) => Assert.Empty(Note.Read(markdown).Diagnostics);

    // An extension that reads attributes in braces would turn this into a real event handler.
    [Theory]
    [InlineData("# h {#id onclick=alert(1)}", "<h3>h {#id onclick=alert(1)}</h3>\n")]
    [InlineData("text {onclick=alert(1)}", "<p>text {onclick=alert(1)}</p>\n")]
    [InlineData("[x](y.html){onclick=alert(1)}", "<p><a href=\"y.html\">x</a>{onclick=alert(1)}</p>\n")]
    public void Attributes_in_braces_are_text(string markdown, string html) => Assert.Equal(html, Note.Html(markdown));

    [Theory]
    [InlineData("\"onmouseover=alert(1) x=\"")]
    [InlineData("&quot; onmouseover=alert(1)")]
    public void A_title_cannot_leave_its_attribute(string title)
    {
        var html = Note.Html($"[x](y.html '{title}')");
        Assert.DoesNotContain("\" on", html, StringComparison.Ordinal);
    }
}
