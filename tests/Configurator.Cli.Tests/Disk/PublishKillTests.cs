using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>The process is really killed, at every step, where names can be exchanged and where they cannot.</summary>
public class PublishKillTests
{
    private static readonly string[] OfEveryPublish =
    [
        PublishSteps.Locked, PublishSteps.Recovered, PublishSteps.StagingMade, PublishSteps.FileWritten,
        PublishSteps.ChecksumsWritten, PublishSteps.Verified, PublishSteps.Swapped, PublishSteps.OldRemoved,
    ];

    public static TheoryData<string, bool> StepsOverAnOldSite { get; } = new(
        OfEveryPublish.SelectMany(step => new (string, bool)[] { (step, true), (step, false) })
            .Append((PublishSteps.MovedAside, false)));

    public static TheoryData<string> StepsOfAFirstPublish { get; } = new(OfEveryPublish);

    public static TheoryData<string> StepsAfterAKillBetweenTheRenames { get; } =
        new(OfEveryPublish.Append(PublishSteps.SitePutBack));

    // Law: killed at any step, the old site or the new one is there whole, and the next publish needs no help.
    [Theory]
    [MemberData(nameof(StepsOverAnOldSite))]
    public void A_kill_leaves_the_old_site_or_the_new_one_and_the_next_publish_tidies_up(string step, bool exchange)
    {
        using var bench = PublishBench.WithOldSite();

        ChildPublish.KilledAt(bench, step, visit: 1, exchange);

        var isBetweenTheRenames = step == PublishSteps.MovedAside;
        var isSwapped = step is PublishSteps.Swapped or PublishSteps.OldRemoved;
        Assert.NotEqual(isBetweenTheRenames, Directory.Exists(bench.Target));
        if (!isBetweenTheRenames)
        {
            bench.Shows(isSwapped ? SampleSites.New : SampleSites.Old);
        }

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [MemberData(nameof(StepsOfAFirstPublish))]
    public void A_kill_of_a_first_publish_leaves_nothing_or_the_whole_site(string step)
    {
        using var bench = new PublishBench();

        ChildPublish.KilledAt(bench, step, visit: 1, exchange: true);

        if (Directory.Exists(bench.Target))
        {
            bench.Shows(SampleSites.New);
        }

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_kill_amid_the_files_leaves_the_old_site(int filesWritten)
    {
        using var bench = PublishBench.WithOldSite();

        ChildPublish.KilledAt(bench, PublishSteps.FileWritten, filesWritten, exchange: true);

        bench.Shows(SampleSites.Old);
        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [MemberData(nameof(StepsAfterAKillBetweenTheRenames))]
    public void A_second_kill_while_the_first_is_put_right_does_no_more_harm(string step)
    {
        using var bench = PublishBench.WithOldSite();
        ChildPublish.KilledAt(bench, PublishSteps.MovedAside, visit: 1, exchange: false);

        ChildPublish.KilledAt(bench, step, visit: 1, exchange: true);

        if (Directory.Exists(bench.Target))
        {
            bench.Shows(step is PublishSteps.Swapped or PublishSteps.OldRemoved ? SampleSites.New : SampleSites.Old);
        }
        else
        {
            Assert.Equal(PublishSteps.Locked, step);
        }

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void After_a_kill_between_the_renames_even_a_publish_that_is_cancelled_puts_the_old_site_back()
    {
        using var bench = PublishBench.WithOldSite();
        ChildPublish.KilledAt(bench, PublishSteps.MovedAside, visit: 1, exchange: false);

        var result = bench.Recover();

        Assert.Equal(PublishVerdict.Cancelled, result.Verdict);
        Assert.Equal(
            $"an earlier publish was interrupted: put the old site back in `{bench.Target}`", result.Messages[1]);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void The_lock_of_a_killed_publish_is_taken_over_and_the_user_is_told()
    {
        using var bench = new PublishBench();
        ChildPublish.KilledAt(bench, PublishSteps.Locked, visit: 1, exchange: true);
        Assert.True(File.Exists(bench.Place.Lock));

        var result = bench.Publish(SampleSites.New);

        Assert.Matches(
            "^took over the lock of process [0-9]+ on .+, which ended before it was done$", result.Messages[0]);
        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void Every_step_is_one_at_which_a_kill_is_tried()
    {
        string[] tried = [.. OfEveryPublish, PublishSteps.MovedAside, PublishSteps.SitePutBack];
        Assert.Empty(PublishSteps.All.Except(tried, StringComparer.Ordinal));
    }
}
