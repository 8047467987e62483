namespace Configurator.Site.Tests.Rendering;

public class DirectiveTests
{
    // The engine knows no tag helpers and would print them as they stand, without a word.
    [Theory]
    [InlineData("[|@addTagHelper *, Some.Assembly|]\n", "@addTagHelper *, Some.Assembly")]
    [InlineData("  [|@removeTagHelper *, Some.Assembly|]\n", "@removeTagHelper *, Some.Assembly")]
    [InlineData("[|@tagHelperPrefix th:|]\n", "@tagHelperPrefix th:")]
    [InlineData("<p>\n<a [|asp-action|]=\"index\">x</a>\n</p>\n", "asp-action")]
    [InlineData("<p>[|<partial|] name=\"_Slot\" /></p>\n", "<partial")]
    [InlineData("<p>[|<vc:port-map|] rows=\"3\" /></p>\n", "<vc:port-map")]
    [InlineData("[|<environment|] include=\"x\">y</environment>\n", "<environment")]
    public void Tag_helpers_are_refused(string template, string used) =>
        Pages.Check($"CFG5005 `{used}` is not allowed in a template", ("Page.cshtml", template));

    // They would bring in what a template must not know, or take away the checks of the base page.
    [Theory]
    [InlineData("[|@inject System.IServiceProvider Services|]\n", "@inject System.IServiceProvider Services")]
    [InlineData("[|@inherits RazorLight.TemplatePage<TModel>|]\n", "@inherits RazorLight.TemplatePage<TModel>")]
    [InlineData("[|@page|]\n", "@page")]
    [InlineData("[|@namespace Elsewhere|]\n", "@namespace Elsewhere")]
    public void Directives_that_reach_beyond_formatting_are_refused(string template, string used) =>
        Pages.Check($"CFG5005 `{used}` is not allowed in a template", ("Page.cshtml", template));

    [Fact]
    public void They_are_refused_in_imports_too() => Pages.Check(
        "CFG5005 `@inject Services services` is not allowed in a template",
        ("_ViewImports.cshtml", "[|@inject Services services|]\n"),
        ("Page.cshtml", "@model Configurator.Site.Tests.Rendering.Crate\n"));

    [Theory]
    [InlineData("@inherits SitePage<TModel>\n")]
    [InlineData("@inherits Configurator.Site.Rendering.SitePage<TModel>\n")]
    public void Imports_may_name_the_base_page(string imports) => Assert.Empty(
        Pages.Renderer(("_ViewImports.cshtml", imports), ("Page.cshtml", "<p>@Raw(SafeHtml.Empty)</p>")).CheckAll());

    [Theory]
    [InlineData("@* @addTagHelper *, X *@\n")]
    [InlineData("<!-- <partial name=\"x\" /> -->\n")]
    [InlineData("@{ var page = 3; }<p>@page</p>\n")]
    [InlineData("<p>asp-like words and <b>partial</b> answers</p>\n")]
    public void What_only_looks_alike_is_allowed(string template) =>
        Assert.Empty(Pages.Renderer(("Page.cshtml", template)).CheckAll());
}
