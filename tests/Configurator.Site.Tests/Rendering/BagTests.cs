namespace Configurator.Site.Tests.Rendering;

/// <summary>What a page hands to the templates around and inside it besides the page record.</summary>
public class BagTests
{
    [Fact]
    public void A_page_hands_a_value_to_its_layout() => Assert.Equal(
        "<body class=\"wide\"><p></p></body>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", "@{ Layout = \"_Layout.cshtml\"; ViewBag.Width = \"wide\"; }<p></p>"),
            ("_Layout.cshtml", "<body class=\"@ViewBag.Width\">@RenderBody()</body>")));

    [Fact]
    public void A_page_hands_a_value_to_what_it_includes() => Assert.Equal(
        "<b>7</b>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", "@model Crate\n@{ ViewBag.Depth = 7; }@await IncludeAsync(\"_Part.cshtml\", Model)"),
            ("_Part.cshtml", "<b>@ViewBag.Depth</b>")));

    [Fact]
    public void Nothing_passes_from_one_page_to_the_next()
    {
        var renderer = Pages.Renderer(
            ("First.cshtml", "@{ ViewBag.Width = \"wide\"; }"),
            ("Second.cshtml", "@(((IDictionary<string, object?>)ViewBag).Count)"));
        renderer.Render("First.cshtml", Pages.Crate);
        Assert.Equal("0", renderer.Render("Second.cshtml", Pages.Crate).Value.Html);
    }
}
