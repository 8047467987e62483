using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace Configurator.Core.Tests.Definitions;

/// <summary>
/// Whatever stands in the definitions, no stage throws, none takes more than two seconds, and every diagnostic marks text
/// that is there. CONFIGURATOR_CASE=NUMBER replays one case, and CONFIGURATOR_CASE_TO=FOLDER lays it out there.
/// </summary>
public class RandomDefinitionTests
{
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(2);

    [Fact]
    public void Twenty_thousand_random_catalogues_are_read_to_the_end() => Try(0, 20_000);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void A_million_random_catalogues_are_read_to_the_end() => Try(20_000, 1_000_000);

    private static void Try(int first, int count)
    {
        if (Environment.GetEnvironmentVariable("CONFIGURATOR_CASE") is { } asked)
        {
            (first, count) = (int.Parse(asked, CultureInfo.InvariantCulture), 1);
        }

        var faults = new ConcurrentBag<(string Words, string Fault)>();
        var slow = new ConcurrentBag<RandomCatalogue>();
        OnAllCores(first, count, () => !faults.IsEmpty, number =>
        {
            var catalogue = RandomCatalogue.Make(number);
            if (Environment.GetEnvironmentVariable("CONFIGURATOR_CASE_TO") is { } folder)
            {
                catalogue.LayOut(folder);
            }

            using var watchdog = new Timer(_ => Environment.FailFast($"does not end: {catalogue.Words}"), null, Hang, Timeout.InfiniteTimeSpan);
            var clock = Stopwatch.StartNew();
            var fault = DefinitionRun.Fault(catalogue);
            if (fault is null && clock.Elapsed > DefinitionRun.Most)
            {
                slow.Add(catalogue);
            }
            else if (fault is not null)
            {
                faults.Add((catalogue.Words, fault));
            }
        });
        Assert.All(slow, catalogue => Assert.False(DefinitionRun.IsSlow(catalogue), $"takes more than two seconds: {catalogue.Words}"));
        Assert.True(faults.IsEmpty, string.Join("\n\n", faults.OrderBy(fault => fault.Words.Length).Take(3).Select(it => $"{it.Words}\n{it.Fault}")));
    }

    /// <summary>On threads of their own: the stages use the pool themselves and would wait for each other there.</summary>
    private static void OnAllCores(int first, int count, Func<bool> isOver, Action<int> work)
    {
        var next = first - 1;
        var threads = Enumerable.Range(0, Environment.ProcessorCount).Select(_ => new Thread(() =>
        {
            while (!isOver() && Interlocked.Increment(ref next) is var number && number < first + count)
            {
                work(number);
            }
        })).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
    }
}
