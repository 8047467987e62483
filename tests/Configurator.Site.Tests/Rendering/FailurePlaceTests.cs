namespace Configurator.Site.Tests.Rendering;

/// <summary>Wherever in a template something fails, its own line is named.</summary>
public class FailurePlaceTests
{
    private const string Message = "CFG5003 `Page.cshtml` failed: Object reference not set to an instance of an object";

    [Theory]
    [InlineData("<p>\n[|@Model.Remark!.Length|]\n</p>\n")]
    [InlineData("<p\n  [|class=\"@Model.Remark!.Length\">x</p>|]\n")]
    [InlineData("@foreach (var slot in Model.Slots)\n{\n  <i>\n    [|@Model.Remark!.Length|]\n  </i>\n}\n")]
    [InlineData("@{\n  var a = 1;\n  [|var b = Model.Remark!.Length;|]\n}\n@(a + b)\n")]
    [InlineData("@functions {\n  int Count(string? text) =>\n    [|text!.Length;|]\n}\n<p>@Count(Model.Remark)</p>\n")]
    [InlineData("@{ await Task.Yield(); }\n[|@Model.Remark!.Length|]\n")]
    public void In_a_page(string template) => Pages.Check(Message, ("Page.cshtml", "@model Crate\n" + template));

    [Fact]
    public void In_a_layout() => Pages.Check(
        Message,
        ("Page.cshtml", "@{ Layout = \"_Layout.cshtml\"; }<p></p>\n"),
        ("_Layout.cshtml", "@model Crate\n@RenderBody()\n[|<b>@Model.Remark!.Length</b>|]\n"));

    [Fact]
    public void In_a_section() => Pages.Check(
        Message,
        ("Page.cshtml", "@model Crate\n@{ Layout = \"_L.cshtml\"; }\n@section Foot {\n  [|@Model.Remark!.Length|]\n}\n"),
        ("_L.cshtml", "@RenderBody()@RenderSection(\"Foot\")\n"));

    // The page record itself is ours: the template's line is where the reader of the message can start.
    [Fact]
    public void In_a_record_that_the_template_asks() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: Index was outside the bounds of the array",
        ("Page.cshtml", "@model Crate\n\n[|<p>@Model.Slots[9].Name</p>|]\n"));
}
