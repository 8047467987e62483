using Configurator.Core.Sources;
using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Markup;

public class LimitTests
{
    [Fact]
    public void A_text_at_the_limit_is_accepted_and_one_character_more_is_not()
    {
        Assert.Null(Check(new string('a', MarkupLimits.CharactersMax)));
        Assert.Equal("CFG5101", Check(new string('a', MarkupLimits.CharactersMax + 1)));
    }

    // 100 rows of 200 bars are 20,000 cells.
    [Fact]
    public void Cells_are_counted_as_rows_times_the_widest_row()
    {
        var row = new string('|', 200) + "\n";
        Assert.Null(Check(string.Concat(Enumerable.Repeat(row, 100))));
        Assert.Equal("CFG5101", Check(string.Concat(Enumerable.Repeat(row, 101))));
        Assert.Equal("CFG5101", Check(row + string.Concat(Enumerable.Repeat("|\n", 100))));
    }

    [Fact]
    public void Lines_without_a_bar_do_not_count() =>
        Assert.Null(Check(new string('|', 200) + "\n" + string.Concat(Enumerable.Repeat("a\n", 20_000))));

    // Law: the estimate is never below the cells that are made.
    [Theory]
    [InlineData("| a | b |\n|---|---|\n| 1 | 2 |\n")]
    [InlineData("a | b\n--- | ---\n1 | 2\n3 |\n")]
    [InlineData("|a|\n|-|\n|1|2|3|\n\n|b|\n|-|\n|c|\n")]
    public void The_estimate_covers_the_table(string markdown)
    {
        var cells = Note.Html(markdown).Split("<td").Length - 1;
        var lines = markdown.Split('\n').Where(line => line.Contains('|', StringComparison.Ordinal)).ToArray();
        Assert.InRange(cells, 1, lines.Length * lines.Max(line => line.Count(character => character == '|')));
    }

    private static string? Check(string text) => MarkupLimits.Check(new(new SourceText("a.md", text), 1))?.Rule.Code;
}
