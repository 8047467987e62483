namespace Configurator.Site.Tests.Rendering;

public class IncludeTests
{
    [Theory]
    [InlineData("@await IncludeAsync(\"shared/_Slot.cshtml\", Model.Slots[0])")]
    [InlineData("@{ await IncludeAsync(\"shared/_Slot.cshtml\", Model.Slots[0]); }")]
    public void An_include_writes_the_other_template_at_its_place(string include) => Assert.Equal(
        "<p><b>X1</b></p>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", $"@model Crate\n<p>{include}</p>"),
            ("shared/_Slot.cshtml", "@model Slot\n<b>@Model.Name</b>")));

    [Fact]
    public void A_template_may_include_itself_as_often_as_the_data_is_deep()
    {
        const string Tree = """
            @model Slot
            <ul>@Model.Name@foreach (var slot in Model.Inner) { await IncludeAsync("Page.cshtml", slot); }</ul>
            """;
        var nested = new Slot("a") { Inner = [new("b") { Inner = [new("c")] }, new("d")] };
        Assert.Equal("<ul>a<ul>b<ul>c</ul></ul><ul>d</ul></ul>", Pages.Html(nested, ("Page.cshtml", Tree)));
    }

    // A recursion without end would otherwise overflow the stack, which ends the process and cannot be caught.
    [Fact]
    public void A_template_that_includes_itself_without_end_is_reported_at_the_include() => Pages.Check(
        "CFG5004 `Page.cshtml` is included 64 levels deep and still includes",
        ("Page.cshtml", "@model Crate\n<p>\n  [|@await IncludeAsync(\"Page.cshtml\", Model)|]\n</p>\n"));

    [Fact]
    public void Two_templates_that_include_each_other_without_end_are_reported()
    {
        var diagnostic = Pages.Check(
            "CFG5004 `_Other.cshtml` is included 64 levels deep and still includes",
            ("Page.cshtml", "@model Crate\n@await IncludeAsync(\"_Other.cshtml\", Model)\n"),
            ("_Other.cshtml", "@model Crate\n@await IncludeAsync(\"Page.cshtml\", Model)\n"));
        Assert.Equal("seen while making `index.html`", Assert.Single(diagnostic.Notes).Message);
    }

    [Fact]
    public void Endless_includes_on_many_threads_do_not_end_the_process()
    {
        var renderer = Pages.Renderer(("Page.cshtml", "@model Crate\n@await IncludeAsync(\"Page.cshtml\", Model)\n"));
        var site = renderer.RenderAll([.. Enumerable.Range(0, 50).Select(i => Job($"{i}.html"))]);
        Assert.Single(site.Diagnostics);
    }

    [Fact]
    public void A_missing_template_is_reported_where_it_is_named() => Pages.Check(
        "CFG5002 there is no template `shared/_Gone.cshtml`",
        ("Page.cshtml", "@model Crate\n<p>@await IncludeAsync(\"[|shared/_Gone.cshtml|]\", Model)</p>\n"));

    [Fact]
    public void A_missing_template_is_reported_even_if_this_run_does_not_come_to_it() => Pages.Check(
        "CFG5002 there is no template `_Gone.cshtml`",
        (
            "Page.cshtml",
            "@model Crate\n@if (Model.Remark is not null) { await IncludeAsync(\"[|_Gone.cshtml|]\", Model); }\n"));

    [Fact]
    public void A_name_in_a_comment_is_no_include() => Assert.Empty(Pages.Renderer(
        (
            "Page.cshtml",
            "@* @await IncludeAsync(\"_Gone.cshtml\", Model) *@\n<!-- Layout = \"_Gone.cshtml\"; -->\n")).CheckAll());

    [Fact]
    public void A_missing_template_with_a_computed_name_is_reported_when_the_page_is_made() => Pages.Check(
        "CFG5002 there is no template `_X1.cshtml`",
        (
            "Page.cshtml",
            "@model Crate\n<p>\n  [|@await IncludeAsync(\"_\" + Model.Slots[0].Name + \".cshtml\", Model)|]\n</p>\n"));

    [Theory]
    [InlineData("../secret.cshtml")]
    [InlineData("/etc/passwd")]
    [InlineData("C:/secret.cshtml")]
    [InlineData("shared/../../secret.cshtml")]
    [InlineData("..\\\\secret.cshtml")]
    public void Nothing_outside_the_templates_folder_can_be_included(string key)
    {
        var page = Pages.Renderer(
            (
                "Page.cshtml",
                $"@model Crate\n@await IncludeAsync(\"{key}\", Model)\n")).Render("Page.cshtml", Pages.Crate);
        Assert.Equal("CFG5002", Assert.Single(page.Diagnostics).Rule.Code);
        Assert.Empty(page.Value.Html);
    }

    [Fact]
    public void An_include_without_a_model_is_reported() => Pages.Check(
        "CFG5003 `_Slot.cshtml` formats `Slot` but was given nothing",
        ("Page.cshtml", "@model Crate\n@await IncludeAsync(\"_Slot.cshtml\", null)\n"),
        ("_Slot.cshtml", "@model Slot\n@Model.Name\n"));

    [Fact]
    public void An_include_with_another_model_is_reported() => Pages.Check(
        "CFG5003 `_Slots.cshtml` formats `List<Slot>` but was given `Crate`",
        ("Page.cshtml", "@model Crate\n@await IncludeAsync(\"_Slots.cshtml\", Model)\n"),
        ("_Slots.cshtml", "@model List<Slot>\n@Model.Count\n"));

    private static Configurator.Site.Rendering.PageJob Job(string path) => new(path, "Page.cshtml", Pages.Crate);
}
