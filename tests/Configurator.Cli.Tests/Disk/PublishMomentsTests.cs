using System.Globalization;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Publishes are killed at moments drawn at random: the built program over its whole run, and a process that
/// does nothing but publish while it writes and swaps.</summary>
public sealed class PublishMomentsTests(ITestOutputHelper output)
{
    private const int Lanes = 2;

    /// <summary>After the lock is there; several publishes of the small sample sites fit in.</summary>
    private static readonly TimeSpan Writing = TimeSpan.FromMilliseconds(300);

    // Law: whenever it is killed, the old site or the new one is there whole, and the next run needs no help.
    [Fact]
    public void A_program_killed_at_random_moments_leaves_a_whole_site_and_the_next_run_recovers() => KillProgram(20, seed: 7);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void A_program_killed_at_many_random_moments_leaves_a_whole_site_and_the_next_run_recovers() => KillProgram(200, seed: 11);

    [Fact]
    public void A_writer_killed_at_random_moments_leaves_a_whole_site_and_the_next_run_recovers() => KillWriter(80, seed: 7);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void A_writer_killed_at_many_random_moments_leaves_a_whole_site_and_the_next_run_recovers() => KillWriter(300, seed: 11);

    private void KillProgram(int count, int seed)
    {
        var lanes = Enumerable.Range(0, Lanes).AsParallel().WithDegreeOfParallelism(Lanes).Select(lane => Run(seed + lane, count / Lanes)).ToList();

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"killed {count} runs of the program: {count - lanes.Sum(lane => lane.Replaced)} times the old site stayed, {lanes.Sum(lane => lane.Replaced)} times the new one was there, {lanes.Sum(lane => lane.Recovered)} times the next run tidied up; {lanes.Sum(lane => lane.Ended)} more were over first"));
    }

    private void KillWriter(int count, int seed)
    {
        var moments = new Random(seed);
        var (old, tidied) = (0, 0);
        using var bench = PublishBench.WithOldSite();
        var (oldTree, newTree) = (PublishBench.TreeOf(SampleSites.Old), PublishBench.TreeOf(SampleSites.New));
        for (var killed = 0; killed < count; killed++)
        {
            Kill(bench, moments.NextDouble() * Writing);

            var tree = bench.Folder.Tree("out/site");
            Assert.True(tree == oldTree || tree == newTree, $"kill {killed}: the site is neither the old nor the new one");
            old += tree == oldTree ? 1 : 0;
            tidied += bench.Folder.Names("out").Length > 1 ? 1 : 0;
            Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.Old).Verdict);
            bench.ShowsOnly(SampleSites.Old);
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"killed {count} writers: {old} times the one site was there, {count - old} times the other, {tidied} times the next run tidied up"));
        Assert.True(old > 0 && old < count && tidied > 0);
    }

    private static void Kill(PublishBench bench, TimeSpan moment)
    {
        using var process = ChildPublish.StartInTurn(bench);
        while (!File.Exists(bench.Place.Lock) && !process.HasExited)
        {
            Thread.Sleep(1);
        }

        Assert.False(process.WaitForExit(moment));
        process.Kill();
        process.WaitForExit();
    }

    private static KillLane Run(int seed, int count)
    {
        using var lane = new KillLane(seed);
        lane.Kill(count);
        return lane;
    }
}
