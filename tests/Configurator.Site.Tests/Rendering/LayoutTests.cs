namespace Configurator.Site.Tests.Rendering;

public class LayoutTests
{
    private const string Frame = """
        @model Crate
        <html><title>@Model.Title</title>@RenderBody()<footer>@RenderSection("Foot", false)</footer></html>
        """;

    [Fact]
    public void A_layout_stands_around_the_page_and_knows_its_model() => Assert.Equal(
        "<html><title>Lid sensor</title><p>350</p><footer></footer></html>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", "@model Crate\n@{ Layout = \"_Layout.cshtml\"; }<p>@Model.Grams</p>"),
            ("_Layout.cshtml", Frame)));

    [Fact]
    public void A_section_is_written_where_the_layout_wants_it() => Assert.Contains(
        "<footer> <b>X1</b> </footer>",
        Pages.Html(
            Pages.Crate,
            (
                "Page.cshtml",
                "@model Crate\n@{ Layout = \"_Layout.cshtml\"; }\n@section Foot { <b>@Model.Slots[0].Name</b> }\n"),
            ("_Layout.cshtml", Frame)),
        StringComparison.Ordinal);

    [Fact]
    public void Layouts_nest() => Assert.Equal(
        "<a><b>page</b></a>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", "@{ Layout = \"_Inner.cshtml\"; }page"),
            ("_Inner.cshtml", "@{ Layout = \"_Outer.cshtml\"; }<b>@RenderBody()</b>"),
            ("_Outer.cshtml", "<a>@RenderBody()</a>")));

    [Fact]
    public void An_included_template_may_have_a_layout_of_its_own() => Assert.Equal(
        "<p><b>part</b></p>",
        Pages.Html(
            Pages.Crate,
            ("Page.cshtml", "@model Crate\n<p>@await IncludeAsync(\"_Part.cshtml\", Model)</p>"),
            ("_Part.cshtml", "@{ Layout = \"_Box.cshtml\"; }part"),
            ("_Box.cshtml", "<b>@RenderBody()</b>")));

    [Fact]
    public void A_missing_layout_is_reported_where_it_is_named() => Pages.Check(
        "CFG5002 there is no template `_Layuot.cshtml`",
        ("Page.cshtml", "@model Crate\n@{\n  Layout = \"[|_Layuot.cshtml|]\";\n}\n<p></p>\n"));

    [Fact]
    public void Layouts_that_lead_back_to_themselves_are_reported() => Pages.Check(
        "CFG5004 the layouts of `Page.cshtml` lead back to themselves",
        ("Page.cshtml", "@{ Layout = \"[|_One.cshtml|]\"; }<p></p>\n"),
        ("_One.cshtml", "@{ Layout = \"_Two.cshtml\"; }@RenderBody()\n"),
        ("_Two.cshtml", "@{ Layout = \"_One.cshtml\"; }@RenderBody()\n"));

    [Fact]
    public void A_layout_of_itself_is_reported() => Pages.Check(
        "CFG5004 the layouts of `Page.cshtml` lead back to themselves",
        ("Page.cshtml", "@{ Layout = \"[|_One.cshtml|]\"; }<p></p>\n"),
        ("_One.cshtml", "@{ Layout = \"_One.cshtml\"; }@RenderBody()\n"));

    [Fact]
    public void A_layout_for_another_model_is_reported() => Pages.Check(
        "CFG5003 `_Layout.cshtml` formats `Slot` but was given `Crate`",
        ("Page.cshtml", "@{ Layout = \"_Layout.cshtml\"; }<p></p>\n"),
        ("_Layout.cshtml", "@model Slot\n@RenderBody()\n"));

    [Fact]
    public void A_section_that_the_layout_leaves_out_is_reported() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: One or more section(s) have been ignored. Ignored section(s): 'Foot'",
        ("Page.cshtml", "@{ Layout = \"_Layout.cshtml\"; }\n@section Foot { <b></b> }\n"),
        ("_Layout.cshtml", "@RenderBody()\n"));
}
