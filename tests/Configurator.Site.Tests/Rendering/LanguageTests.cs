namespace Configurator.Site.Tests.Rendering;

/// <summary>What page editors may count on in a template.</summary>
public class LanguageTests
{
    [Theory]
    [InlineData("@Model.Slots.Length", "2")]
    [InlineData("@string.Join(\", \", Model.Slots.Select(slot => slot.Name))", "X1, X2")]
    [InlineData("@(Model.Remark ?? \"none\")", "none")]
    [InlineData("@if (Model.Remark is null) { <b>none</b> }", "<b>none</b>")]
    [InlineData("@switch (Model.Slots.Length) { case 2: <b>two</b> break; }", "<b>two</b>")]
    [InlineData("@{ var (first, second) = (1, 2); }@(first + second)", "3")]
    [InlineData("@(Model.Slots is [var one, ..] ? one.Name : \"\")", "X1")]
    [InlineData("@System.Numerics.BigInteger.Pow(2, 70)", "1180591620717411303424")]
    [InlineData("a@@b", "a@b")]
    [InlineData("@* nothing *@", "")]
    [InlineData("<text>x</text>", "<text>x</text>")]
    [InlineData("@{ <text>x</text> }", "x")]
    public void Expressions_and_statements(string template, string html) =>
        Assert.Equal(html, Pages.Html(Pages.Crate, ("Page.cshtml", "@model Crate\n" + template)).Trim());

    [Theory]
    [InlineData("<a href=\"@Model.Remark\">x</a>", "<a>x</a>")]
    [InlineData("<a class=\"a @Model.Title b\">x</a>", "<a class=\"a Lid sensor b\">x</a>")]
    [InlineData("<input checked=\"@(Model.Grams > 1)\">", "<input checked=\"checked\">")]
    [InlineData("<input checked=\"@(Model.Grams < 1)\">", "<input>")]
    [InlineData("<td colspan=\"@(1 + 1)\">", "<td colspan=\"2\">")]
    public void An_attribute_without_a_value_is_left_out(string template, string html) =>
        Assert.Equal(html, Pages.Html(Pages.Crate, ("Page.cshtml", "@model Crate\n" + template)).Trim());

    [Fact]
    public void Line_breaks_are_those_of_the_template() => Assert.Equal(
        "<p>\n  x\n</p>\n", Pages.Html(Pages.Crate, ("Page.cshtml", "@model Crate\r\n<p>\r\n  x\r\n</p>\r\n")));

    // What formatting does not need is not there to be used by mistake.
    [Theory]
    [InlineData("System.Net.Http.HttpClient")]
    [InlineData("System.Diagnostics.Process")]
    [InlineData("System.Xml.XmlDocument")]
    [InlineData("Microsoft.CodeAnalysis.SyntaxTree")]
    public void Libraries_beyond_formatting_are_out_of_reach(string type) => Assert.Contains(
        Pages.Renderer(("Page.cshtml", $"@(typeof({type}))\n")).CheckAll(),
        diagnostic => diagnostic.Rule.Code == "CFG5001");
}
