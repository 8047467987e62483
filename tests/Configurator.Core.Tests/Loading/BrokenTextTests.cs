using Configurator.Core.Tests.Support;
using CsCheck;

namespace Configurator.Core.Tests.Loading;

public class BrokenTextTests
{
    [Theory]
    [InlineData("an unclosed double quote", "option: film\ntitle: \"Lid\n", 2)]
    [InlineData("an unclosed single quote", "option: film\ntitle: 'Lid\n", 2)]
    [InlineData("a tab that indents", "option: film\nfits:\n\t- a\n", 3)]
    [InlineData("an unclosed bracket", "option: film\nlist: [a, b\n", 2)]
    [InlineData("an unclosed brace", "option: film\nmap: {a: b\n", 2)]
    [InlineData("an unclosed brace in a list", "option: film\nfits:\n  - {fit: a, device: b\n  - {fit: c}\n", 3)]
    [InlineData("a bracket too many", "option: film\nlist: [a]]\n", 2)]
    [InlineData("a colon too many", "option: film\ntitle: Lid: film\n", 2)]
    [InlineData("a value without its key", "option: film\nfilm\n", 2)]
    [InlineData("indentation that goes back halfway", "option: film\nfits:\n    a: x\n  b: y\n", 4)]
    [InlineData("an unknown escape", "option: film\ntitle: \"\\q\"\n", 2)]
    [InlineData("a lone surrogate as an escape", "option: film\ntitle: \"\\uD800\"\n", 2)]
    [InlineData("a reserved indicator", "option: film\ntitle: @lid\n", 2)]
    public void Text_that_is_no_yaml_is_reported_once_near_its_place(string what, string text, int line)
    {
        var diagnostic = CheckLoading.OnlyDiagnostic(text);
        Assert.True(diagnostic.Rule.Code == "CFG1004", $"{what}: {diagnostic.Rule.Code}");
        Assert.True(diagnostic.Span.Line == line, $"{what}: {diagnostic.Span} {diagnostic.Message}");
        Assert.StartsWith("check indentation, colons, quotes and brackets", diagnostic.Fix!.Message, StringComparison.Ordinal);
        Assert.False(diagnostic.Message.EndsWith('.'), diagnostic.Message);
        Assert.True(char.IsLower(diagnostic.Message[0]), diagnostic.Message);
    }

    [Fact]
    public void A_tab_that_indents_is_marked_itself() => CheckLoading.Says(
        "option: film\nfits:\n[|\t|]- a\n", "CFG1004 while scanning a mapping, found invalid tab as indentation");

    [Fact]
    public void What_is_still_open_at_the_end_is_reported_at_the_end_of_the_last_line() => CheckLoading.Says(
        "option: film\nmap: {a: b[||]\n", "CFG1004 while parsing a flow mapping, did not find expected ',' or '}'");

    // Law: whatever the text, the loader returns; what it says stands inside the text.
    [Fact]
    public void Whatever_is_written_is_read_or_reported() => Pieces.Array[0, 24].Select(string.Concat).Sample(text =>
    {
        var loaded = CheckLoading.Load([.. CheckLoading.Utf8(text)]);
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        Assert.True(loaded.Value.Definitions.Length == 1 || loaded.HasErrors);
        Assert.All(loaded.Diagnostics, diagnostic =>
        {
            Assert.InRange(diagnostic.Span.Line, 1, lines.Length);
            Assert.InRange(diagnostic.Span.Column - 1 + diagnostic.Span.Length, 0, lines[diagnostic.Span.Line - 1].Length);
        });
    }, iter: 1000);

    private static readonly Gen<string> Pieces = Gen.OneOf(
        "a", "b: ", "- ", "{", "}", "[", "]", ",", ": ", "? ", "\n", "\n  ", "\n    ", "\t", "\"", "'", "|", "|2", ">", "&a ", "*a",
        "!t ", "%", "#", "---", "...", "\n---\n", "@", "`", "\\", "\\x41", "\u00E9", "\n- ", "<<: ", "key:", "0", "\r", " ");

    [Theory]
    [InlineData("a null", '\0', "U+0000")]
    [InlineData("a bell", '\a', "U+0007")]
    [InlineData("an escape", '\u001B', "U+001B")]
    [InlineData("delete", '\u007F', "U+007F")]
    [InlineData("a C1 control", '\u0085', "U+0085")]
    [InlineData("a line separator", '\u2028', "U+2028")]
    [InlineData("a right-to-left override", '\u202E', "U+202E")]
    [InlineData("a left-to-right embedding", '\u202A', "U+202A")]
    [InlineData("a first strong isolate", '\u2068', "U+2068")]
    [InlineData("a byte-order mark inside", '\uFEFF', "U+FEFF")]
    [InlineData("a non-character", '\uFFFE', "U+FFFE")]
    public void A_character_that_nobody_sees_is_reported_where_it_stands(string what, char character, string name)
    {
        var diagnostic = CheckLoading.OnlyDiagnostic($"option: film\ntitle: a{character}b\n");
        Assert.True(diagnostic.Message == $"character {name} cannot be seen and is not allowed", $"{what}: {diagnostic.Message}");
        Assert.Equal((2, 9, 1), (diagnostic.Span.Line, diagnostic.Span.Column, diagnostic.Span.Length));
        Assert.Equal("delete it", diagnostic.Fix!.Message);
    }

    // Source: Unicode Standard Annex 9, section 2.6: implicit marks change no order by force.
    [Theory]
    [InlineData("plain right-to-left text", "\u05D0\u05D1")]
    [InlineData("a right-to-left mark", "\u200F")]
    [InlineData("a no-break space", "\u00A0")]
    [InlineData("a tab inside", "a\tb")]
    [InlineData("an emoji", "\U0001F3AC")]
    public void Characters_that_readers_see_or_need_are_text(string what, string text) =>
        Assert.True(CheckLoading.Root($"option: film\ntitle: a{text}b\n").Entries.Length == 2, what);

    [Fact]
    public void Each_line_with_a_hidden_character_is_reported_once() => CheckLoading.Says(
        "option: [|\u202E|]film\u202C\ntitle: x[|\u2066|]\u2066\n",
        "CFG1014 character U+202E cannot be seen and is not allowed",
        "CFG1014 character U+2066 cannot be seen and is not allowed");

    // What the escape means stands in the pages, where nobody sees the escape.
    [Theory]
    [InlineData("\\u202E", "U+202E")]
    [InlineData("\\0", "U+0000")]
    [InlineData("\\x1B", "U+001B")]
    [InlineData("\\uFEFF", "U+FEFF")]
    public void An_escape_that_gives_a_hidden_character_is_reported_at_its_value(string escape, string name) => CheckLoading.Says(
        $"option: film\ntitle: [|\"a{escape}b\"|]\n", $"CFG1014 character {name} cannot be seen and is not allowed");

    [Fact]
    public void Escapes_that_give_text_are_text() => CheckLoading.Root("option: film\ntitle: \"a\\tb\\nc \\u00E9\"\n");
}
