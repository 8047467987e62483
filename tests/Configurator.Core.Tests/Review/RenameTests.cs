using Configurator.Core.Review;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>A new id that lists the old one is a rename, not a loss and a gain.</summary>
public class RenameTests
{
    private const string Old = "options/checking/tray-count.yaml";
    private const string New = "options/checking/tray-eyes.yaml";

    private static BaseCatalogue Renamed(string formerly)
    {
        var whole = BaseCatalogue.Whole;
        return whole.Paths.Where(path => path.EndsWith(".yaml", StringComparison.Ordinal) && path != Old)
            .Aggregate(
                whole.Without(Old).And(New, whole.TextOf(Old).Replace("option: tray-count", "option: tray-eyes", StringComparison.Ordinal) + formerly),
                (catalogue, path) => catalogue.And(path, whole.TextOf(path).Replace("tray-count", "tray-eyes", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_option_that_lists_its_old_id_is_renamed_and_nothing_else_happens() => Assert.Equal(
        "renamed: option: `tray-count` → `tray-eyes`",
        ReviewPair.Compare(BaseCatalogue.Whole, Renamed("formerly: [tray-count]\n"))
            .Said(ReviewTopic.Homes, ReviewTopic.Orders, ReviewTopic.Hardware, ReviewTopic.Settings, ReviewTopic.Records, ReviewTopic.Definitions));

    [Fact]
    public void Its_released_documents_read_differently_and_no_result_changed()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, Renamed("formerly: [tray-count]\n"));
        Assert.DoesNotContain("released-changed", report.Said(), StringComparison.Ordinal);
        Assert.DoesNotContain("finding-", report.Said(), StringComparison.Ordinal);
    }

    // Source: by hand as in ReviewPairTests: 7 of the 10 configurations have a tray eye.
    [Fact]
    public void Without_the_old_id_it_is_a_loss_and_a_gain()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, Renamed(""));
        Assert.Equal("8 lost, 80 %", report.The("orders-lost").Remark);
        Assert.Equal("8 new, 80 %", report.The("orders-won").Remark);
        Assert.Contains("option-removed: `tray-count`", report.Said(), StringComparison.Ordinal);
        Assert.Contains("home-removed: `tray-count/tray-eye/1`", report.Said(), StringComparison.Ordinal);
    }
}
