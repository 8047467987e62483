using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Tests.Diagnostics.Printing;

// Source: workflow commands of GitHub Actions: message escapes % CR LF; a property those and : and , in this order.
public class DiagnosticAnnotationsTests
{
    [Fact]
    public void An_annotation_names_file_lines_columns_title_and_message() => Assert.Equal(
        "::error file=options/lids/top-film.yaml,line=2,endLine=2,col=12,endColumn=16,title=CFG2003%3A Unknown name"
        + "::there is no option `snap`%0Aoptions/lids/snap-lid.yaml(1,9): this one was meant%0Ato fix: replace it\n",
        Print(Samples.Plain() with
        {
            Notes = [new("this one was meant", new("options/lids/snap-lid.yaml", 1, 9, 8))],
            Fix = new("replace it"),
        }));

    [Theory]
    [InlineData("100%", "100%25")]
    [InlineData("a%0Ab", "a%250Ab")]
    [InlineData("a: b, c; d", "a: b, c; d")]
    public void A_message_escapes_the_percent_sign_and_no_punctuation(string message, string printed) =>
        Assert.EndsWith($"::{printed}\n", Print(Samples.Plain(message)), StringComparison.Ordinal);

    [Theory]
    [InlineData("a:b", "a%3Ab")]
    [InlineData("a,b", "a%2Cb")]
    [InlineData("a%b", "a%25b")]
    [InlineData("a;b", "a;b")]
    [InlineData("a\r\nb", @"a\u000D\u000Ab")]
    public void A_file_name_cannot_end_its_property(string path, string printed) => Assert.StartsWith(
        $"::error file={printed},line=1,endLine=1,",
        Print(new(Samples.UnknownName, "x", new(path, 1, 1, 1))), StringComparison.Ordinal);

    [Fact]
    public void An_annotation_ends_on_the_line_that_it_starts_on_or_its_columns_would_be_dropped() => Assert.Contains(
        "line=7,endLine=7,col=3,endColumn=3,",
        Print(Samples.Plain(line: 7, column: 3, length: 0)), StringComparison.Ordinal);

    [Fact]
    public void The_worst_come_first() => Assert.Equal(["error", "warning", "notice"], Levels(
        new(Samples.Remark, "x", new("a", 1, 1, 1)),
        new(Samples.Useless, "x", new("b", 1, 1, 1)),
        new(Samples.UnknownName, "x", new("c", 1, 1, 1))));

    [Fact]
    public void Of_each_level_ten_are_printed_for_no_more_are_shown() => Assert.Equal(
        [.. Enumerable.Repeat("error", 10), .. Enumerable.Repeat("warning", 10)],
        Levels([.. Many(Samples.UnknownName, 11), .. Many(Samples.Useless, 12)]));

    [Fact]
    public void Within_a_level_they_come_by_place() => Assert.Equal(
        ["line=1", "line=2", "line=3"],
        Lines(Many(Samples.UnknownName, 3).Reverse()).Select(line => line.Split(',')[1]));

    [Fact]
    public void A_message_is_cut_where_the_runner_would_cut_it()
    {
        var message = Print(Samples.Plain(new string('x', 5000))).TrimEnd('\n').Split("::")[^1];
        Assert.Equal(4096, message.Length);
        Assert.EndsWith("x ...", message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples.Hostile), MemberType = typeof(Samples))]
    public void Nothing_from_a_definition_becomes_a_command_of_its_own(string hostile)
    {
        var printed = Print(Samples.Full(hostile));
        Assert.Equal(1, printed.Count('\n'));
        Assert.StartsWith("::error file=options/lids/top-film.yaml,line=1,", printed, StringComparison.Ordinal);
        Assert.DoesNotMatch("##[a-z]*\\[", printed);
        Assert.DoesNotContain(printed.TrimEnd('\n'), Samples.CannotBeSeen);
    }

    private static IEnumerable<Diagnostic> Many(Rule rule, int count) =>
        Enumerable.Range(1, count).Select(line => new Diagnostic(rule, "x", new("a", line, 1, 1)));

    private static IEnumerable<string> Levels(params Diagnostic[] diagnostics) =>
        Lines(diagnostics).Select(line => line[2..line.IndexOf(' ', StringComparison.Ordinal)]);

    private static string[] Lines(IEnumerable<Diagnostic> diagnostics) =>
        DiagnosticAnnotations.Of(diagnostics).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static string Print(Diagnostic diagnostic) => DiagnosticAnnotations.Of([diagnostic]);
}
