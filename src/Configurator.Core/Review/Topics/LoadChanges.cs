using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Loads, number of parts and price of published configurations, and the most that any order comes
/// to.</summary>
internal static class LoadChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        context
            .Machines.Where(pair => pair.IsWhole)
            .AsParallel()
            .AsOrdered()
            .Select(pair => OfPublished(context, pair).Concat(Worst(pair)).ToList())
            .ToList()
            .SelectMany(changes => changes);

    private static IEnumerable<Change> OfPublished(ReviewContext context, MachinePair pair)
    {
        ImmutableArray<ConfigurationPair> published = [.. context.Configurations.Where(one => one.Machine == pair.Id)];
        var parts = published.Select(one => new Weighed(
            one.Id.Value,
            one.Before.Report.Fitted.Fitted.Length,
            one.After.Report.Fitted.Fitted.Length
        ));
        return Loads(pair)
            .Select(load => Tell(pair, load.Title.In(Text.BaseLanguage), Weigh(pair, load, published), load.Print))
            .Prepend(Tell(pair, "Devices", [.. parts], small => FormattableString.Invariant($"{small}")))
            .OfType<Change>();
    }

    private static IEnumerable<Load> Loads(MachinePair pair) =>
        MachineLoads
            .Of(pair.Before)
            .Concat(MachineLoads.Of(pair.After))
            .DistinctBy(load => load.Id, StringComparer.Ordinal);

    private static ImmutableArray<Weighed> Weigh(
        MachinePair pair,
        Load load,
        ImmutableArray<ConfigurationPair> published
    )
    {
        var (before, after) = (MachineLoads.Of(pair.Before, load), MachineLoads.Of(pair.After, load));
        return
        [
            .. published.Select(one => new Weighed(
                one.Id.Value,
                before.Of(one.Before.Proved.Configuration.QuantityOf),
                after.Of(one.After.Proved.Configuration.QuantityOf)
            )),
        ];
    }

    /// <summary>The configuration whose load changes most stands for all; null where none changes.</summary>
    private static Change? Tell(
        MachinePair pair,
        string name,
        ImmutableArray<Weighed> weighed,
        Func<long, string> print
    )
    {
        ImmutableArray<Weighed> changed = [.. weighed.Where(one => one.Before != one.After)];
        if (changed.IsEmpty)
        {
            return null;
        }

        var most = changed.MaxBy(one => Math.Abs(one.After - one.Before))!;
        return new(HardwareKinds.LoadChanged, name, [ReviewPlace.After(pair.After.Id.Span)])
        {
            Machine = pair.Id,
            Before = print(most.Before),
            After = print(most.After),
            Remark = changed.Length == 1 ? "" : $"most in `{most.Configuration}`",
            Configurations = [.. changed.Select(one => one.Configuration).Order(StringComparer.Ordinal)],
        };
    }

    private static IEnumerable<Change> Worst(MachinePair pair)
    {
        if (pair is not { LogicBefore: { } before, LogicAfter: { } after })
        {
            yield break;
        }

        var (was, now) = (WorstCases.Of(before).Loads, WorstCases.Of(after).Loads);
        foreach (
            var load in was.Concat(now).Select(worst => worst.Load).DistinctBy(load => load.Id, StringComparer.Ordinal)
        )
        {
            var old = was.FirstOrDefault(worst => worst.Load.Id == load.Id)?.Heaviest.Weight ?? 0;
            var heaviest = now.FirstOrDefault(worst => worst.Load.Id == load.Id)?.Heaviest.Weight ?? 0;
            if (old != heaviest)
            {
                yield return new(
                    HardwareKinds.WorstLoadChanged,
                    load.Title.In(Text.BaseLanguage),
                    [ReviewPlace.After(pair.After.Id.Span)]
                )
                {
                    Machine = pair.Id,
                    Before = load.Print(old),
                    After = load.Print(heaviest),
                };
            }
        }
    }

    private sealed record Weighed(string Configuration, long Before, long After);
}
