using AngleSharp.Html.Parser;
using Configurator.Site.Rendering;
using CsCheck;

namespace Configurator.Site.Tests.Rendering;

public class RoundTripTests
{
    private const string Template = """
        @model Crate
        <!DOCTYPE html>
        <title>t</title>
        <p id="a" title="@Model.Title">@Model.Title</p>
        <p id="z">end</p>
        """;

    private static readonly PageRenderer Renderer = Pages.Renderer(("Page.cshtml", Template));

    private static Gen<string> Texts { get; } = Pieces.Text(
        countMax: 12,
        "<", ">", "&", "\"", "'", "&amp;", "&lt", "</p>", "<script>", "-->", "]]>", "a", "ü", "日", "😀", "=", "`", "+",
        "\u00a0");

    // Law: what a page record says is what a reader reads, as text and as an attribute.
    [Fact]
    public void Any_text_arrives_as_it_was() => Texts.Sample(text =>
    {
        var html = Renderer.Render("Page.cshtml", Pages.Crate with { Title = text }).Value.Html;
        var page = new HtmlParser().ParseDocument(html);
        Assert.Equal(text, page.GetElementById("a")!.TextContent);
        Assert.Equal(text, page.GetElementById("a")!.GetAttribute("title"));
        Assert.Equal("end", page.GetElementById("z")!.TextContent);
        Assert.Empty(page.Scripts);
    });
}
