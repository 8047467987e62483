namespace Configurator.Site.Tests.Markup;

public class ProseTests
{
    [Fact]
    public void Paragraphs_emphasis_and_code() => Assert.Equal(
        "<p>Wash at <strong>60 °C</strong>, <em>never</em> above; see <code>dwell</code>.</p>\n",
        Note.Html("Wash at **60 °C**, *never* above; see `dwell`.\n"));

    [Fact]
    public void Lists_keep_their_numbers() => Assert.Equal(
        "<ol start=\"3\">\n<li>open</li>\n<li>rinse</li>\n</ol>\n", Note.Html("3. open\n4. rinse\n"));

    [Fact]
    public void Quotes_rules_and_definition_lists() => Assert.Equal(
        "<blockquote>\n<p>keep dry</p>\n</blockquote>\n<hr>\n<dl>\n<dt>dwell</dt>\n<dd>time at heat</dd>\n</dl>\n",
        Note.Html("> keep dry\n\n---\n\ndwell\n:   time at heat\n"));

    [Fact]
    public void A_code_block_shows_its_text_and_loses_its_language() => Assert.Equal(
        "<pre><code>a: &lt;1&gt;\n</code></pre>\n", Note.Html("```yaml\na: <1>\n```\n"));

    // Ranges, powers and designations are common in notes and must come out as they went in.
    [Theory]
    [InlineData("10~20 mm and 30~40 mm")]
    [InlineData("10^-3 and 10^-4")]
    [InlineData("=A1+B2-X3 and X_1 and $5")]
    [InlineData("5 < 6 and 7 > 6")]
    [InlineData(":-) (c) -- ... {.class}")]
    public void Engineering_text_is_not_taken_for_markup(string text) => Assert.Equal(
        $"<p>{System.Net.WebUtility.HtmlEncode(text)}</p>\n", Note.Html(text));

    [Fact]
    public void Line_ends_of_any_kind_give_the_same_page() =>
        Assert.Equal(Note.Html("a\n\n- b\n"), Note.Html("a\r\n\r\n- b\r\n"));

    [Fact]
    public void An_empty_note_is_empty() => Assert.True(Note.Read("").Value.IsEmpty);

    [Fact]
    public void The_same_note_makes_the_same_html_however_many_are_made_at_once()
    {
        const string Text = "# A\n\n| a | b |\n|---|--:|\n| [x](y.html) | 2 |\n\n> *q*\n";
        var alone = Note.Html(Text);
        var together = Enumerable.Range(0, 200).AsParallel().Select(_ => Note.Html(Text)).ToArray();
        Assert.All(together, html => Assert.Equal(alone, html));
    }
}
