using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Review;
using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>A pair of catalogues in which every difference is known by enumeration.</summary>
public class ReviewPairTests
{
    private static readonly ReviewReport Report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed, new(2027, 3, 2));

    // Source: enumerated by hand; F top film, S snap lid (one of them), G gas flush (needs F and two eyes), R reject
    // (brings an eye), T tray eyes 0 to 2. Before, R is not with S: S with T 0 1 2; F with T 0 1 2, RT1 RT2, GT2 GRT2:
    // 3 + 7 = 10. After, F needs T: F alone is lost; R goes with S: SRT1 SRT2 are won: 10 - 1 + 2 = 11.
    [Fact]
    public void Configurations_won_and_lost_are_those_counted_by_hand()
    {
        var (lost, won) = (Report.The("orders-lost"), Report.The("orders-won"));
        Assert.Equal(("10", "11", "1 lost, 10 %"), (lost.Before, lost.After, lost.Remark));
        Assert.Equal(("10", "11", "2 new, 18 %"), (won.Before, won.After, won.Remark));
        Assert.Equal(
            ["`top-film` needs `tray-count` (The film stops when trays stop), `options/lids/top-film.yaml` line 6; e.g. `top-film`"],
            lost.Details);
        Assert.EndsWith("; e.g. `reject`, `snap-lid`, `tray-count` | `reject`, `snap-lid`, 2 × `tray-count`", Assert.Single(won.Details), StringComparison.Ordinal);
        Assert.StartsWith("before, `reject` and `snap-lid` cannot be ordered together", won.Details[0], StringComparison.Ordinal);
    }

    // Source: the edits of ReviewPair.Changed; the salad is released, the delivered machine has the eye at main:1.
    [Fact]
    public void A_home_that_moved_comes_first_and_names_who_has_it() => Assert.Equal(
        "home-moved: `tray-count/tray-eye/1` on `tray-one`: `main:1` → `main:2`; 1 of these released; on delivered `t1-0001` (in `salad`)",
        Report.Said().Split('\n')[0]);

    [Fact]
    public void A_released_result_that_changed_without_a_revision_step_fails()
    {
        var change = Report.The("released-changed");
        Assert.Equal(Severity.Error, change.Level);
        Assert.Equal("revision A as before, but other homes, findings, settings; give it a new revision, or undo what changed it", change.Remark);
        Assert.True(ReviewVerdict.Usual.Fails(Report));
    }

    // Source: both list prices of the salad by hand: options 1800 + 2400 + 900 + 2 x 60 EUR, devices 480 + 310 + 240 + 2 x 85 EUR,
    // and 650 EUR for the extension master that the second eye needs.
    [Fact]
    public void The_price_follows_the_device() => Assert.Contains(
        "load-changed: List price of options on `tray-one`: 7070 EUR → 7080 EUR (in `salad`)", Report.Said(ReviewTopic.Hardware), StringComparison.Ordinal);

    [Fact]
    public void Settings_notes_and_delivered_machines_are_told() => Assert.Equal(
        """
        delivered-contradicted: `t1-0001`: `tray-count/tray-eye/1` on `tray-one`: is at `main:1` → will be documented at `main:2`
        setting-changed: `film-eye` `threshold` on `tray-one`: 40 percent → 45 percent; recipe `green-salad`
        sanitation-changed: `top-film`, sanitation, step foam and scrub: reworded (in `salad`)
        """,
        Report.Said(ReviewTopic.Settings));

    // Source: the record of ReviewPair.Changed ends 29 days after the day of the run.
    [Fact]
    public void A_new_record_is_told_and_that_it_ends_soon() => Assert.Equal(
        """
        record-added: `ports.spare/main` of `salad` on `tray-one`: until 2027-03-31 by controls lead: The spare ports come with the next master; master `main` has 5 of 8 ports free; the limit is 6
        record-ending: `ports.spare/main` of `salad` on `tray-one`: until 2027-03-31 by controls lead: The spare ports come with the next master; master `main` has 5 of 8 ports free; the limit is 6
        """,
        Report.Said(ReviewTopic.Records));

    [Fact]
    public void A_record_that_has_ended_is_an_error()
    {
        var late = ReviewPair.Compare(ReviewPair.Changed, ReviewPair.Changed, new(2027, 4, 1));
        Assert.Equal(Severity.Error, late.The("record-ended").Level);
        Assert.Single(late.Changes);
    }

    [Fact]
    public void Nothing_is_said_of_a_catalogue_that_did_not_change()
    {
        var same = ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole);
        Assert.Equal("", same.Said());
        Assert.Empty(same.Limits);
        Assert.StartsWith("## Review: nothing changed in meaning\n", ReviewMarkdown.Of(same, ReviewVerdict.Usual), StringComparison.Ordinal);
    }

    [Fact]
    public void A_review_is_the_same_every_time() => Assert.Equal(
        ReviewJson.Of(Report, ReviewVerdict.Usual),
        ReviewJson.Of(ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed, new(2027, 3, 2)), ReviewVerdict.Usual));

    // Golden, without the pages: which there are changes with every new document. UPDATE_EXPECTED=1 writes it anew.
    [Fact]
    public void The_summary_is_the_one_that_was_read_and_approved()
    {
        var file = Path.Combine(Repository.Folder, "tests", "Data", "review", "summary.md");
        var summary = ReviewMarkdown.Of(
            Report with { Changes = [.. Report.Changes.Where(change => change.Kind.Topic != ReviewTopic.Site)] },
            ReviewVerdict.Usual);
        if (Environment.GetEnvironmentVariable("UPDATE_EXPECTED") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, summary, new UTF8Encoding(false));
        }

        Assert.Equal(File.ReadAllText(file), summary);
    }
}
