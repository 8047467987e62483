using Configurator.Core.Review;
using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>Annotations stand on the changed lines.</summary>
public class PlaceTests
{
    private static readonly ReviewReport Report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed, new(2027, 3, 2));

    // Source: the lines that ReviewPair.Changed edits, found in its texts.
    [Theory]
    [InlineData("home-moved", ReviewPair.Plan, "tray-count/tray-eye/1: main:2")]
    [InlineData("orders-lost", ReviewPair.Film, "{option: tray-count, because: The film stops")]
    [InlineData("setting-changed", ReviewPair.Recipe, "45 percent")]
    [InlineData("sanitation-changed", ReviewPair.FilmNotes, "a soft wet cloth")]
    [InlineData("delivered-contradicted", ReviewPair.Plan, "tray-count/tray-eye/1: main:2")]
    [InlineData("record-added", ReviewPair.Salad, "ports.spare/main")]
    public void A_change_is_shown_on_the_line_that_made_it(string kind, string path, string line)
    {
        var place = Report.The(kind).Line!.Value;
        Assert.Equal(path, place.Path);
        Assert.Contains(line, ReviewPair.Changed.TextOf(path).Split('\n')[place.Line - 1], StringComparison.Ordinal);
    }

    // Source: the rule stood on lines 5 and 6 of the file; what follows it now stands on line 5.
    [Fact]
    public void A_rule_that_is_gone_is_shown_where_it_stood()
    {
        var place = Report.The("orders-won").Line!.Value;
        Assert.Equal((ReviewPair.Reject, 5), (place.Path, place.Line));
    }

    // Source: the finding's own line (the master) did not change; the only change of its file is `spare-ports`.
    [Fact]
    public void A_finding_that_fails_is_shown_at_the_nearest_changed_line_of_its_file()
    {
        var failing = BaseCatalogue.Whole.Replacing(ReviewPair.Machine, "spare-ports: 1", "spare-ports: 6");
        var place = ReviewPair.Compare(BaseCatalogue.Whole, failing).Changes.First(change => change.Kind.Id == "finding-failed").Line!.Value;
        Assert.Contains("spare-ports: 6", failing.TextOf(ReviewPair.Machine).Split('\n')[place.Line - 1], StringComparison.Ordinal);
    }

    [Fact]
    public void Annotations_name_file_and_line_and_the_worst_come_first()
    {
        var lines = ReviewAnnotations.Of(Report).TrimEnd('\n').Split('\n');
        Assert.StartsWith($"::error file={ReviewPair.Salad},line=", lines[0], StringComparison.Ordinal);
        Assert.Equal(lines.Select(Rank).Order(), lines.Select(Rank));
        Assert.Contains(lines, line => line.StartsWith($"::warning file={ReviewPair.Plan},line=7,endLine=7,", StringComparison.Ordinal));
        Assert.All(lines.GroupBy(Rank), level => Assert.InRange(level.Count(), 1, 10));
    }

    private static int Rank(string line) => line[2] switch { 'e' => 0, 'w' => 1, _ => 2 };
}
