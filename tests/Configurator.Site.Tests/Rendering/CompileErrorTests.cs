namespace Configurator.Site.Tests.Rendering;

public class CompileErrorTests
{
    [Fact]
    public void A_misspelt_member_is_reported_where_it_is_written() => Pages.Check(
        "CFG5001 `Crate` does not contain a definition for `Titel` (CS1061)",
        ("Page.cshtml", "@model Crate\n<main>\n  <h1>@Model.[|Titel|]</h1>\n</main>\n"));

    [Fact]
    public void A_misspelt_member_inside_an_attribute_and_a_loop_is_found_too() => Pages.Check(
        "CFG5001 `Slot` does not contain a definition for `Nmae` (CS1061)",
        (
            "Page.cshtml",
            "@model Crate\n@foreach (var slot in Model.Slots)\n{\n  <i class=\"a @slot.[|Nmae|] b\"></i>\n}\n"));

    [Fact]
    public void Every_mistake_of_a_template_is_reported_in_one_run()
    {
        var renderer = Pages.Renderer(("Page.cshtml", "@model Crate\n@Model.One\n@Model.Two\n"));
        Assert.Equal([2, 3], renderer.CheckAll().Select(diagnostic => diagnostic.Span.Line));
    }

    [Fact]
    public void A_template_that_no_page_uses_is_compiled_as_well() => Pages.Check(
        "CFG5001 the name `Modell` does not exist in the current context (CS0103)",
        ("Page.cshtml", "@model Crate\n"),
        ("shared/_Unused.cshtml", "@model Crate\n@[|Modell|].Title\n"));

    [Fact]
    public void An_unknown_model_is_reported_at_its_line() => Pages.Check(
        "CFG5001 the type or namespace name `Crates` could not be found (CS0246)",
        ("Page.cshtml", "\n@model [|Crates|]\n<p></p>\n"));

    // Without a type, members could not be checked before a page is made.
    [Fact]
    public void Without_a_model_line_a_template_can_format_nothing() => Pages.Check(
        "CFG5001 `object` does not contain a definition for `Title` (CS1061)",
        ("Page.cshtml", "<p>@Model.[|Title|]</p>\n"));

    [Fact]
    public void A_brace_that_is_never_closed_is_reported_where_it_opens()
    {
        var diagnostic = Pages.Renderer(
            ("Page.cshtml", "@model Crate\n@if (Model.Remark is null) {\n<br>\n")).CheckAll()[0];
        Assert.StartsWith(
            "the if block is missing a closing `}` character", diagnostic.Message, StringComparison.Ordinal);
        Assert.Equal((2, 2), (diagnostic.Span.Line, diagnostic.Span.Column));
    }

    [Fact]
    public void A_mistake_in_the_imports_is_reported_there_and_once() => Pages.Check(
        "CFG5001 the type or namespace name `Nowhere` could not be found (CS0246)",
        ("_ViewImports.cshtml", "@using [|Nowhere|]\n"),
        ("Page.cshtml", "<p></p>\n"),
        ("Other.cshtml", "<p></p>\n"));

    [Fact]
    public void Imports_reach_the_templates_below_their_folder_and_no_others()
    {
        var renderer = Pages.Renderer(
            ("_ViewImports.cshtml", "@using System.Text\n"),
            ("a/_ViewImports.cshtml", "@using Configurator.Site.Tests.Rendering\n"),
            ("a/b/In.cshtml", "@model Crate\n@(new StringBuilder())\n"),
            ("c/Out.cshtml", "@model Crate\n"));
        Assert.Equal(["site-templates/c/Out.cshtml"], renderer.CheckAll().Select(diagnostic => diagnostic.Span.Path));
    }

    // The engine's own default is an old form of the language that refuses this.
    [Fact]
    public void Markup_may_stand_in_a_local_function_and_in_a_value() => Assert.Equal(
        "<b>X1</b><b>X2</b><i>!</i>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", """
                @model Crate
                @{ void Bold(string text) { <b>@text</b> } }
                @{ foreach (var slot in Model.Slots) { Bold(slot.Name); } Func<object?, object> mark = @<i>!</i>; }
                @mark(null)
                """)).ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal));

    [Fact]
    public void A_template_that_does_not_compile_makes_no_page_but_the_others_do()
    {
        var renderer = Pages.Renderer(("Good.cshtml", "good"), ("Bad.cshtml", "@Bad"));
        var site = renderer.RenderAll([new("bad.html", "Bad.cshtml", 1), new("good.html", "Good.cshtml", 1)]);
        Assert.Equal(["good.html"], site.Value.Files.Keys);
        Assert.Single(site.Diagnostics);
    }
}
