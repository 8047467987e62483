using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

/// <summary>The pages' content policy allows scripts and styles from files of the site only.</summary>
public class InlineTests
{
    [Theory]
    [InlineData("[|<script|]>alert(1)</script>", "a script inside the page is blocked")]
    [InlineData("[|<script|] type=\"application/json\">{}</script>", "a script inside the page is blocked")]
    [InlineData("[|<style|]>p { color: red }</style>", "a style sheet inside the page is blocked")]
    [InlineData("[|<p|] style=\"color: red\">x</p>", "a `style` attribute is blocked")]
    [InlineData("[|<p|] onclick=\"alert(1)\">x</p>", "the event handler `onclick` is blocked")]
    [InlineData(
        "<svg viewBox=\"0 0 1 1\">[|<g|] onload=\"alert(1)\"></g></svg>", "the event handler `onload` is blocked")]
    public void Scripts_and_styles_inside_a_page_are_reported(string body, string message) =>
        Check(body, "CFG6007 " + message);

    // Measured: browsers do not run these from a folder.
    [Theory]
    [InlineData(
        "[|<script|] type=\"module\" src=\"../a.js\"></script>",
        "a module script does not run when the page is opened from a folder")]
    [InlineData(
        "[|<link|] rel=\"modulepreload\" href=\"../a.js\">",
        "a module script does not run when the page is opened from a folder")]
    [InlineData(
        "[|<script|] src=\"../a.js\" integrity=\"sha384-x\"></script>",
        "`integrity` keeps the file from loading when the page is opened from a folder")]
    [InlineData(
        "[|<script|] src=\"../a.js\" crossorigin></script>",
        "`crossorigin` keeps the file from loading when the page is opened from a folder")]
    public void What_does_not_run_from_a_folder_is_reported(string body, string message) =>
        Check(body, "CFG6007 " + message, ("a.js", ""));

    [Fact]
    public void A_plain_script_and_sheet_of_the_site_are_fine() => Accept(
        "<link rel=\"stylesheet\" href=\"../a.css\"><script defer src=\"../a.js\"></script>",
        ("a.js", ""),
        ("a.css", ""));

    [Fact]
    public void A_script_that_was_written_as_text_is_text() => Accept("<p>&lt;script&gt;alert(1)&lt;/script&gt;</p>");

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<script href=\"a.js\"/>")]
    [InlineData("<s:script xmlns:s=\"http://www.w3.org/2000/svg\">alert(1)</s:script>")]
    [InlineData("<foreignObject><b>x</b></foreignObject>")]
    [InlineData("<g onload=\"alert(1)\"/>")]
    public void A_drawing_must_not_act(string content) => Assert.Contains(
        Inspect(("assets/a.svg", $"<svg xmlns=\"http://www.w3.org/2000/svg\">{content}</svg>"), ("assets/a.js", "")),
        diagnostic => diagnostic.Rule.Code == "CFG6007");

    [Fact]
    public void A_drawing_must_not_define_entities() => Assert.Equal(
        "CFG6007",
        Assert.Single(
            Inspect(
                (
                    "assets/a.svg",
                    "<!DOCTYPE svg [<!ENTITY x \"y\">]><svg xmlns=\"http://www.w3.org/2000/svg\"/>"))).Rule.Code);

    [Fact]
    public void A_plain_drawing_is_fine() => Assert.Empty(Inspect(("assets/a.svg", """
        <?xml version="1.0"?>
        <svg xmlns="http://www.w3.org/2000/svg"><title>x</title><path d="M0 0"/></svg>
        """)));
}
