using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>A wire in the box that goes to another terminal is told as a home that moved is.</summary>
public class PlaceMovedTests
{
    private const string Line = "standard/guard/1: {safety-inputs: [1, 2]}";

    // By hand: the guard of every machine, the released and the delivered ones too.
    [Fact]
    public void A_number_that_a_fit_had_and_has_no_more_is_a_wire_that_moved()
    {
        var change = After("standard/guard/1: {safety-inputs: [3, 2]}").The("place-moved");
        Assert.Equal(("`standard/guard/1`", "`safety-inputs` 1 2", "`safety-inputs` 3 2"), (change.Subject, change.Before, change.After));
        Assert.Contains("on delivered `t1-0001`", change.Remark, StringComparison.Ordinal);
        Assert.Equal(ReviewPair.Plan, change.Line!.Value.Path);
    }

    [Theory]
    [InlineData(Line)]
    [InlineData("standard/guard/1: {safety-inputs: [1, 2], fast-inputs: [1]}")]
    public void What_stays_or_is_added_is_no_wire_that_moved(string line) =>
        Assert.DoesNotContain("place-moved", After(line).Said(), StringComparison.Ordinal);

    private static Core.Review.ReviewReport After(string line) =>
        ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole.Replacing(ReviewPair.Plan, Line, line));
}
