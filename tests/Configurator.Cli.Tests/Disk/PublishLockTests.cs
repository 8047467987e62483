using System.Globalization;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

public class PublishLockTests
{
    [Fact]
    public void While_one_publish_is_at_work_a_second_fails_and_says_who_is()
    {
        using var bench = PublishBench.WithOldSite();
        PublishResult? second = null;

        var first = bench.Publish(SampleSites.New, step => second ??= bench.Publish(SampleSites.Old));

        Assert.Equal(PublishVerdict.Published, first.Verdict);
        Assert.Equal(PublishVerdict.Failed, second?.Verdict);
        Assert.Equal(
            string.Create(
                CultureInfo.InvariantCulture,
                $"another publish is at work: process {Environment.ProcessId} on {Environment.MachineName} ")
            + $"holds `{bench.Place.Lock}`",
            second?.Problem?.Why);
        Assert.Equal("wait until it has ended", second?.Problem?.Fix);
        bench.ShowsOnly(SampleSites.New);
    }

    // Law: however many publish at once, each is published or told to wait, and the site is one of theirs, whole.
    [Fact]
    public void Many_at_once_never_mix_their_sites()
    {
        using var bench = PublishBench.WithOldSite();

        var results = Enumerable.Range(0, 24)
            .AsParallel().WithDegreeOfParallelism(8)
            .Select(number => bench.Publish(number % 2 == 0 ? SampleSites.New : SampleSites.Old))
            .ToList();

        Assert.Contains(results, result => result.Verdict == PublishVerdict.Published);
        Assert.All(results, result => Assert.True(
            result.Verdict == PublishVerdict.Published
            || result.Problem!.Why.StartsWith("another publish is at work", StringComparison.Ordinal)));
        Assert.All(results, result => Assert.Empty(result.Messages));
        Assert.Equal(["site"], bench.Folder.Names("out"));
        string[] whole = [PublishBench.TreeOf(SampleSites.Old), PublishBench.TreeOf(SampleSites.New)];
        Assert.True(whole.Contains(bench.Folder.Tree("out/site"), StringComparer.Ordinal));
    }

    [Fact]
    public void Publishes_to_different_places_do_not_wait_for_each_other()
    {
        using var bench = new PublishBench();
        var other = bench.Folder["out/other"];
        PublishResult? second = null;

        bench.Publish(SampleSites.New, step => second ??= bench.Publish(SampleSites.Old, to: other));

        Assert.Equal(PublishVerdict.Published, second?.Verdict);
    }

    [Theory]
    [InlineData("configurator is publishing: process 1 on press-7\n", "process 1 on press-7")]
    [InlineData("configurator is publishing: process 1 on \u001b[31mred\n", "process 1 on \\u{1b}[31mred")]
    public void A_lock_file_that_nobody_holds_is_taken_over(string left, string shown)
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/site.lock", left);

        var result = bench.Publish(SampleSites.New);

        Assert.Equal([$"took over the lock of {shown}, which ended before it was done"], result.Messages);
        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [InlineData("")]
    [InlineData("configurator is pu")]
    public void A_lock_file_is_taken_over_from_a_run_killed_before_it_had_signed(string left)
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/site.lock", left);

        Assert.Empty(bench.Publish(SampleSites.New).Messages);

        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [InlineData("echo 'pinned packages' > site.lock")]
    [InlineData("head -c 100000 /dev/zero > site.lock")]
    [InlineData("mkdir site.lock")]
    [InlineData("mkfifo site.lock")]
    [InlineData("ln -s ../catalogue/src/Program.cs site.lock")]
    [InlineData("ln -s nowhere site.lock")]
    public void Something_else_under_the_name_of_the_lock_is_left_alone(string script)
    {
        using var bench = PublishBench.WithOldSite();
        Shell.Run(bench.Folder["out"], script);

        var result = bench.Publish(SampleSites.New);

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.Equal($"`{bench.Place.Lock}` is in the way: it is not a lock of publish", result.Problem?.Why);
        bench.Shows(SampleSites.Old);
        Assert.Equal(["site", "site.lock"], bench.Folder.Names("out"));
        Assert.Equal("return 0;", File.ReadAllText(bench.Folder["catalogue/src/Program.cs"]));
    }
}
