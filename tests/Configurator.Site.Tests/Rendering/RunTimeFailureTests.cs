namespace Configurator.Site.Tests.Rendering;

public class RunTimeFailureTests
{
    [Fact]
    public void A_failure_is_reported_at_the_line_of_the_template() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: Object reference not set to an instance of an object",
        ("Page.cshtml", "@model Crate\n<main>\n    [|<h1>@Model.Remark!.Length</h1>|]\n</main>\n"));

    [Fact]
    public void A_failure_inside_an_include_is_reported_in_the_included_template() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: no room",
        ("Page.cshtml", "@model Crate\n@await IncludeAsync(\"_Part.cshtml\", Model)\n"),
        ("_Part.cshtml", "@model Crate\n\n[|@{ throw new InvalidOperationException(\"no room.\"); }|]\n"));

    [Fact]
    public void A_failure_names_the_first_page_that_showed_it_and_is_reported_once()
    {
        var renderer = Pages.Renderer(("Page.cshtml", "@model Crate\n@Model.Remark!.Length\n"));
        var site = renderer.RenderAll(
        [
            new("a.html", "Page.cshtml", Pages.Crate with { Remark = "fine" }),
            new("b.html", "Page.cshtml", Pages.Crate),
            new("c.html", "Page.cshtml", Pages.Crate),
        ]);
        Assert.Equal(["a.html"], site.Value.Files.Keys);
        Assert.Equal("seen while making `b.html`", Assert.Single(Assert.Single(site.Diagnostics).Notes).Message);
    }

    [Fact]
    public void A_message_of_several_lines_becomes_one_line() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: one two",
        ("Page.cshtml", "@{ throw new InvalidOperationException(\"one\\r\\ntwo\"); }\n"));

    [Fact]
    public void A_page_without_a_model_is_reported()
    {
        var page = Pages.Renderer(("Page.cshtml", "@model Crate\n")).Render("Page.cshtml", model: null);
        Assert.Equal("`Page.cshtml` formats `Crate` but was given nothing", Assert.Single(page.Diagnostics).Message);
    }

    [Fact]
    public void A_page_whose_template_is_missing_is_reported_at_the_file_that_should_be_there()
    {
        var page = Pages.Renderer().Render("Machine.cshtml", Pages.Crate);
        Assert.Equal("CFG5002", Assert.Single(page.Diagnostics).Rule.Code);
        Assert.Equal("site-templates/Machine.cshtml(1,1)", page.Diagnostics[0].Span.ToString());
    }

    // A page record of a more special kind is still one of the general kind.
    [Fact]
    public void A_model_of_a_derived_kind_fits()
    {
        var sealedCrate = new SealedCrate("Sealed");
        Assert.Equal("Sealed", Pages.Html(sealedCrate, ("Page.cshtml", "@model Crate\n@Model.Title")));
    }

    public sealed record SealedCrate(string Title) : Crate(Title, 1, [], null);
}
