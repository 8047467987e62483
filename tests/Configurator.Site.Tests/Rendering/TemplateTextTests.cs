using Configurator.Core.Sources;
using Configurator.Site.Rendering;
using CsCheck;

namespace Configurator.Site.Tests.Rendering;

public class TemplateTextTests
{
    [Theory]
    [InlineData("@{ Layout = \"_Layout.cshtml\"; }", "_Layout.cshtml layout 14")]
    [InlineData("@{Layout=\"a/_B.cshtml\";}", "a/_B.cshtml layout 11")]
    [InlineData("@await IncludeAsync(\"_A.cshtml\", Model)", "_A.cshtml include 22")]
    [InlineData("@{ await IncludeAsync ( \"_A.cshtml\" , x); }", "_A.cshtml include 26")]
    [InlineData(
        "@(a ? IncludeAsync(\"A.cshtml\", 1) : IncludeAsync(\"B.cshtml\", 2))",
        "A.cshtml include 21 B.cshtml include 51")]
    [InlineData("@await IncludeAsync(\"_\" + name, Model)", "")]
    [InlineData("@await IncludeAsync($\"_{name}.cshtml\", Model)", "")]
    [InlineData("@{ Layout = null; }", "")]
    [InlineData("@{ var MyLayout = \"_A.cshtml\"; }", "")]
    [InlineData("@* Layout = \"_A.cshtml\"; *@", "")]
    public void Names_of_other_templates_are_found_where_they_are_written_out(string text, string expected) =>
        Assert.Equal(
        expected,
        string.Join(' ', TemplateCall.In(new SourceText("site-templates/A.cshtml", text))
            .Select(call => $"{call.Key} {(call.IsLayout ? "layout" : "include")} {call.Span.Column}")));

    // Law: a place found in the blanked text is a place in the text.
    [Fact]
    public void Blanking_comments_moves_nothing() => Texts.Sample(text =>
    {
        var template = new SourceText("A.cshtml", text);
        var blank = TemplateComments.Blank(template);
        Assert.Equal(template.Text.Length, blank.Text.Length);
        for (var i = 0; i < blank.Text.Length; i++)
        {
            Assert.True(blank.Text[i] == template.Text[i] || blank.Text[i] == ' ');
        }
    });

    [Theory]
    [InlineData("a@* b *@c", "a       c")]
    [InlineData("a<!-- b -->c", "a          c")]
    [InlineData("@* a\nb *@c", "    \n    c")]
    [InlineData("@* a", "@* a")]
    [InlineData("@* a *@ b @* c *@", "        b        ")]
    public void Comments_become_blanks(string text, string expected) =>
        Assert.Equal(expected, TemplateComments.Blank(new SourceText("A.cshtml", text)).Text);

    [Theory]
    [InlineData("A.cshtml", true)]
    [InlineData("a/b/_C.cshtml", true)]
    [InlineData("a..b.cshtml", true)]
    [InlineData("A.html", false)]
    [InlineData("", false)]
    [InlineData("/A.cshtml", false)]
    [InlineData("a//B.cshtml", false)]
    [InlineData("a/../B.cshtml", false)]
    [InlineData("./A.cshtml", false)]
    [InlineData("c:A.cshtml", false)]
    [InlineData("a\\B.cshtml", false)]
    public void A_key_stays_below_the_folder(string key, bool sound) => Assert.Equal(sound, TemplateKey.IsSound(key));

    // The messages are those of the C# and Razor compilers, word for word.
    [Theory]
    [InlineData(
        "'Crate' does not contain a definition for 'Titel' and no accessible extension method 'Titel' accepting a "
        + "first argument of type 'Crate' could be found (are you missing a using directive or an assembly reference?)",
        "`Crate` does not contain a definition for `Titel`")]
    [InlineData(
        "The name 'x' does not exist in the current context", "the name `x` does not exist in the current context")]
    [InlineData("; expected", "; expected")]
    [InlineData("Syntax error, ':' expected", "syntax error, `:` expected")]
    [InlineData(
        "The \"p\" element was not closed.  All elements must be either self-closing or have a matching end tag.",
        "the `p` element was not closed. All elements must be either self-closing or have a matching end tag")]
    [InlineData(
        "The 'section` directive must appear at the start of the line.",
        "the `section` directive must appear at the start of the line")]
    [InlineData("CS-like words stay", "CS-like words stay")]
    public void What_the_compilers_say_takes_the_form_of_our_messages(string said, string message) =>
        Assert.Equal(message, CompilerWords.Plain(said));

    private static Gen<string> Texts { get; } = Pieces.Text(
        countMax: 20,
        "@*", "*@", "<!--", "-->", "\n", "\r\n", " ", "a", "@", "*", "\"", "Layout = \"x\";", "😀");
}
