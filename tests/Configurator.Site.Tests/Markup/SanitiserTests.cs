using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Markup;

/// <summary>The second wall: what it would do if a form of Markdown let HTML through.</summary>
public class SanitiserTests
{
    [Theory]
    [InlineData("<p id=\"a\" class=\"b\" style=\"color:red\" data-x=\"1\">x</p>", "<p>x</p>")]
    [InlineData("<p onclick=\"alert(1)\">x</p>", "<p>x</p>")]
    [InlineData("<script>alert(1)</script>x", "x")]
    [InlineData("<form action=\"https://example.org\"><input name=\"a\"></form>x", "x")]
    [InlineData("<iframe src=\"y.html\"></iframe>x", "x")]
    [InlineData("<svg><script>alert(1)</script></svg>x", "x")]
    [InlineData("<a href=\"//example.org\">x</a>", "<a>x</a>")]
    [InlineData("<a href=\"java\nscript:alert(1)\">x</a>", "<a>x</a>")]
    [InlineData("<a href=\"javascript&colon;alert(1)\">x</a>", "<a>x</a>")]
    [InlineData("<a href=\"y.html\" target=\"_blank\" ping=\"https://example.org\">x</a>", "<a href=\"y.html\">x</a>")]
    [InlineData("<img src=\"https://example.org/p.png\" alt=\"a\">", "<img alt=\"a\">")]
    [InlineData(
        "<img src=\"a.png\" srcset=\"https://example.org/p.png 2x\" alt=\"a\">", "<img src=\"a.png\" alt=\"a\">")]
    [InlineData("<!-- x -->y", "y")]
    [InlineData("<math><mtext></math><b>x</b>", "")]
    public void Only_what_a_note_needs_passes(string html, string clean) =>
        Assert.Equal(clean, Sanitiser.Clean(html).Html);

    [Fact]
    public void What_passed_once_passes_unchanged()
    {
        const string Html = """
            <h3>a</h3><table><caption>a</caption><tbody>
            <tr><th scope="row" rowspan="2">b</th></tr></tbody></table>
            """;
        Assert.Equal(Html, Sanitiser.Clean(Html).Html);
    }
}
