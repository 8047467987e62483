using System.Text;
using Configurator.Core.Sources;
using Configurator.Site.Inspecting;
using Configurator.Site.Tests.Rendering;
using CsCheck;

namespace Configurator.Site.Tests.Inspecting;

public class HtmlPageTests
{
    [Theory]
    [InlineData("<!DOCTYPE html>\n<p>x", "p", 2, 1)]
    [InlineData("<!DOCTYPE html>\n\n  <P class=a>x", "p", 3, 3)]
    [InlineData("<!DOCTYPE html>\r\n<div>\r\n<p>x", "p", 3, 1)]
    [InlineData("<!DOCTYPE html>\n<div>ü日😀<p>x", "p", 2, 10)]
    [InlineData("<!DOCTYPE html>\n<!-- <svg> is not counted? --><p>x</p>", "p", 2, 31)]
    [InlineData("<!DOCTYPE html>\n<div>\n <svg></svg></div>", "svg", 3, 2)]
    public void An_element_has_the_place_of_its_start_tag(string text, string element, int line, int column)
    {
        var page = Read(text);
        Assert.Equal(
            new SourceSpan("_site/a.html", line, column, element.Length + 1),
            page.SpanOf(page.Document.QuerySelector(element)!));
    }

    // HTML Living Standard, 13.1.2.4: html, head, body and tbody may be left out.
    [Theory]
    [InlineData("tbody", "<table")]
    [InlineData("body", "")]
    public void An_element_that_nobody_wrote_has_the_place_of_the_one_around_it(string element, string expected)
    {
        var page = Read("<!DOCTYPE html>\n<table><tr><td>x</td></tr></table>");
        var span = page.SpanOf(page.Document.QuerySelector(element)!);
        Assert.Equal(expected, page.Text.Line(span.Line).Substring(span.Column - 1, span.Length));
    }

    // Law: every place points at the name of the element that has it.
    [Fact]
    public void Any_place_shows_the_tag_of_its_element() => Pages.Sample(text =>
    {
        var page = Read(text);
        foreach (var element in page.Document.QuerySelectorAll("p,b,ul,li,svg,g"))
        {
            var span = page.SpanOf(element);
            Assert.Equal("<" + element.LocalName, page.Text.Line(span.Line).Substring(span.Column - 1, span.Length));
        }
    });

    [Fact]
    public void Bytes_that_are_no_text_are_no_page() => Assert.Null(HtmlPage.Read("a.html", new byte[] { 0xC3, 0x28 }));

    private static Gen<string> Pages { get; } = Pieces.Text(
        "<!DOCTYPE html>\n",
        countMax: 20,
        "<p>a</p>", "<ul><li>x</li></ul>", "\n", "  ", "text &amp; ü", "<b>😀</b>", "<svg><g></g></svg>",
        "<!-- c -->");

    private static HtmlPage Read(string text) => HtmlPage.Read("a.html", Encoding.UTF8.GetBytes(text))!;
}
