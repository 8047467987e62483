using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Diagnostics.Printing;

public class DiagnosticTextTests
{
    [Fact]
    public void It_says_what_where_why_and_how_to_fix_it() => Assert.Equal(
        """
        options/lids/top-film.yaml(2,12): error CFG2003: there is no option `snap`
            not-with: [snap]
                       ~~~~
          options/lids/snap-lid.yaml(1,9): this one was meant
          machines/tray-one/machine.yaml(4,3): it is offered here
          to fix: replace it with `snap-lid`
          read more: configurator about CFG2003

        """,
        Print("option: top-film\nnot-with: [snap]\n", Samples.Plain() with
        {
            Notes =
            [
                new("this one was meant", new("options/lids/snap-lid.yaml", 1, 9, 8)),
                new("it is offered here", new("machines/tray-one/machine.yaml", 4, 3, 8)),
            ],
            Fix = new("replace it with `snap-lid`", new(Samples.Path, 2, 12, 4), "snap-lid"),
        }));

    [Fact]
    public void What_concerns_a_whole_file_shows_no_line_of_it() => Assert.Equal(
        """
        options/lids/top-film.yaml(1,1): error CFG2003: the file holds no definition
          read more: configurator about CFG2003

        """,
        Print("# empty\n", Samples.Plain("the file holds no definition", 1, 1, 0)));

    [Fact]
    public void A_place_between_two_characters_is_marked_once() =>
        Assert.Equal(["    fits:", "        ~"], SourceOf("fits:", Samples.Plain(line: 1, column: 5, length: 0)));

    [Fact]
    public void A_file_that_is_not_at_hand_leaves_the_line_out() =>
        Assert.Equal(2, DiagnosticText.Of([Samples.Plain()], new Dictionary<string, SourceText>()).Count('\n'));

    [Fact]
    public void Diagnostics_are_printed_by_place_then_code() => Assert.Equal(
        ["a(1,1)", "a(1,2)", "a(2,1)", "b(1,1)"],
        Heads(At("b", 1, 1), At("a", 2, 1), At("a", 1, 2), At("a", 1, 1)));

    [Theory]
    [InlineData("expected `[a, b]`", "expected `[a, b]`")]
    [InlineData("expected [a, b]", "expected [a, b].")]
    public void A_message_that_ends_in_a_bracket_gets_a_full_stop(string message, string printed) => Assert.Equal(
        $"options/lids/top-film.yaml(2,12): error CFG2003: {printed}",
        Print("", Samples.Plain(message)).Split('\n')[0]);

    [Fact]
    public void A_tab_takes_one_column_so_that_the_mark_stays_under_its_word() => Assert.Equal(
        ["     a:  snap", "         ~~~~"],
        SourceOf("\ta:\t snap", Samples.Plain(line: 1, column: 6, length: 4)));

    [Fact]
    public void An_escaped_character_moves_the_mark_with_it() => Assert.Equal(
        [@"    a\u202Eb: snap", "              ~~~~"],
        SourceOf("a\u202Eb: snap", Samples.Plain(line: 1, column: 6, length: 4)));

    [Fact]
    public void A_marked_character_that_cannot_be_seen_is_marked_as_wide_as_its_escape() => Assert.Equal(
        [@"    a\u202Eb", "     ~~~~~~"],
        SourceOf("a\u202Eb", Samples.Plain(line: 1, column: 2, length: 1)));

    [Fact]
    public void A_span_past_the_end_of_its_line_is_marked_to_the_end() =>
        Assert.Equal(["    snap", "      ~~"], SourceOf("snap", Samples.Plain(line: 1, column: 3, length: 9)));

    [Fact]
    public void Of_a_very_long_line_the_part_around_the_mark_is_shown()
    {
        var line = new string('x', 500) + "snap" + new string('y', 500);
        var source = SourceOf(line, Samples.Plain(line: 1, column: 501, length: 4));
        Assert.Equal("snap", source[0].Substring(source[1].IndexOf('~'), 4));
        Assert.Equal("~~~~", source[1].Trim());
        Assert.True(source[0].Length < 200);
    }

    [Theory]
    [MemberData(nameof(Samples.Hostile), MemberType = typeof(Samples))]
    public void Nothing_from_a_definition_can_act_on_a_terminal_or_a_build_log(string hostile)
    {
        var line = hostile.Split('\n')[0];
        var printed = Print(line, Samples.Full(hostile));
        Assert.DoesNotContain(printed.Replace('\n', ' '), Samples.CannotBeSeen);
        Assert.DoesNotMatch("##[a-z]*\\[", printed);
        Assert.DoesNotContain(printed.Split('\n'), Samples.OpensCommand);
    }

    private static Diagnostic At(string path, int line, int column) =>
        new(Samples.UnknownName, "x", new(path, line, column, 1));

    private static IEnumerable<string> Heads(params Diagnostic[] diagnostics) => DiagnosticText
        .Of(diagnostics, new Dictionary<string, SourceText>()).Split('\n')
        .Where(line => line.Length > 0 && line[0] != ' ')
        .Select(line => line.Split(':')[0]);

    private static string Print(string text, Diagnostic diagnostic) => DiagnosticText.Of(
        [diagnostic], new Dictionary<string, SourceText> { [Samples.Path] = new(Samples.Path, text) });

    private static string[] SourceOf(string line, Diagnostic diagnostic) => Print(line, diagnostic).Split('\n')[1..3];
}
