using System.Globalization;

namespace Configurator.Cli.Tests.Disk;

/// <summary>The built program is killed at moments drawn at random: half over the whole run, half while it
/// writes and swaps.</summary>
public sealed class PublishMomentsTests(ITestOutputHelper output)
{
    private const int Lanes = 2;

    // Law: whenever it is killed, the old site or the new one is there whole, and the next run needs no help.
    [Fact]
    public void Killed_at_a_hundred_random_moments_the_site_is_whole_and_the_next_run_recovers() => Kill(100, seed: 7);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Killed_at_five_hundred_random_moments_the_site_is_whole_and_the_next_run_recovers() => Kill(500, seed: 11);

    private void Kill(int count, int seed)
    {
        var lanes = Enumerable.Range(0, Lanes).AsParallel().WithDegreeOfParallelism(Lanes).Select(lane => Run(seed + lane, count / Lanes)).ToList();

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"killed {count} publishes: {count - lanes.Sum(lane => lane.Replaced)} times the old site stayed, {lanes.Sum(lane => lane.Replaced)} times the new one was there, {lanes.Sum(lane => lane.Recovered)} times the next run tidied up; {lanes.Sum(lane => lane.Ended)} more were over first"));
        Assert.True(lanes.Sum(lane => lane.Recovered) > 0);
    }

    private static KillLane Run(int seed, int count)
    {
        using var lane = new KillLane(seed);
        lane.Kill(count);
        return lane;
    }
}
