using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>Broken definitions on either side still give what can be said.</summary>
public class BrokenSideTests
{
    private static readonly BaseCatalogue Broken = ReviewPair.Changed.Replacing(ReviewPair.Eye, "kind: sensor", "kind: senser");

    [Fact]
    public void An_order_that_became_impossible_is_told_with_rule_and_repair()
    {
        var report = ReviewPair.Compare(
            BaseCatalogue.Whole,
            BaseCatalogue.Whole.Replacing(ReviewPair.Salad, "options: [gas-flush, reject, top-film, tray-count]", "options: [gas-flush, reject, snap-lid, tray-count]"));
        var change = report.The("configuration-invalid");
        Assert.Equal("`salad`", change.Subject);
        Assert.Contains(change.Details, detail => detail.StartsWith("`gas-flush` needs `top-film`", StringComparison.Ordinal) && detail.Contains("to fix: the nearest order that works", StringComparison.Ordinal));
    }

    // Law: an order that breaks a rule says nothing of other orders; what fails for all of them is still found.
    [Fact]
    public void A_double_booked_port_is_told_beside_an_order_that_became_impossible()
    {
        var broken = BaseCatalogue.Whole
            .Replacing(ReviewPair.Salad, "options: [gas-flush, reject, top-film, tray-count]", "options: [gas-flush, reject, snap-lid, tray-count]")
            .Replacing(ReviewPair.Plan, "tray-count/tray-eye/1: main:1", "tray-count/tray-eye/1: main:3");
        var report = ReviewPair.Compare(BaseCatalogue.Whole, broken);
        Assert.Equal("released, revision A", report.The("configuration-invalid").Remark);
        Assert.Contains(report.Changes, change => change.Kind.Id == "finding-failed" && change.Subject.StartsWith("`ports.sharing/", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mistake_after_the_change_is_told_and_the_rest_is_compared()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, Broken);
        Assert.Contains("fault-added: CFG", report.Said(), StringComparison.Ordinal);
        Assert.Contains("home-moved: `tray-count/tray-eye/1`", report.Said(), StringComparison.Ordinal);
        var limit = Assert.Single(report.Limits, limit => limit.StartsWith("`after` has 1 error (CFG", StringComparison.Ordinal));
        Assert.Contains($"`{ReviewPair.Eye}` line ", limit, StringComparison.Ordinal);
        Assert.EndsWith("; what depends on it is not compared", limit, StringComparison.Ordinal);
        Assert.Contains("pages are not compared: a side with errors has none", report.Limits);
        Assert.DoesNotContain("option-removed", report.Said(), StringComparison.Ordinal);
    }

    // Law: what was not compared is never called unchanged.
    [Fact]
    public void Pages_that_were_not_compared_are_not_called_unchanged()
    {
        var headline = ReviewHeadlines.Unchanged(ReviewPair.Compare(BaseCatalogue.Whole, Broken));
        Assert.DoesNotContain("pages", headline, StringComparison.Ordinal);
        Assert.Contains("pages", ReviewHeadlines.Unchanged(ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_that_is_mended_is_told_too()
    {
        var report = ReviewPair.Compare(Broken, ReviewPair.Changed);
        Assert.Contains("fault-gone: CFG", report.Said(), StringComparison.Ordinal);
        Assert.Contains(report.Limits, limit => limit.StartsWith("`before` has 1 error (CFG", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_no_text_harms_nothing() => Assert.Contains(
        "fault-added: ", ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole.And(ReviewPair.Plan, [0xFF, 0xFE, 0x00])).Said(), StringComparison.Ordinal);

    [Fact]
    public void A_machine_without_its_file_is_gone_on_either_side()
    {
        var without = BaseCatalogue.Whole.Paths.Where(path => path.StartsWith("machines/", StringComparison.Ordinal))
            .Aggregate(BaseCatalogue.Whole, (catalogue, path) => catalogue.Without(path));
        Assert.Contains("machine-added: `tray-one`", ReviewPair.Compare(without, BaseCatalogue.Whole).Said(), StringComparison.Ordinal);
        Assert.Contains("machine-removed: `tray-one`", ReviewPair.Compare(BaseCatalogue.Whole, without).Said(), StringComparison.Ordinal);
    }
}
