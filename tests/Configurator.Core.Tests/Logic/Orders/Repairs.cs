using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Finds all smallest sets of changes that make an order work, by trying everything.</summary>
/// <param name="isComplete">The order is all that is wanted: what is missing may only come with something else.</param>
internal sealed class Repairs(Oracle oracle, PartialOrder order, bool isComplete)
{
    private const int ShownMax = 5;

    private readonly ImmutableArray<OptionId> _changeable = [.. oracle.Options.Union(order.Picks.Keys)];

    /// <summary>The best ones, all different, none with more changes than another one needs; each works.</summary>
    public void Are(ImmutableArray<Repair> repairs)
    {
        var smallest = BitSets.Minimal(
            isComplete ? oracle.All.Select(ChangesTo).OfType<ulong>() : oracle.Kept.Select(Dropped)
        );
        var found = repairs.Select(repair => Bits(repair.Changes.Select(change => change.Option))).ToList();
        Assert.Equal(smallest.Take(ShownMax).Select(BitOperations.PopCount), found.Select(BitOperations.PopCount));
        Assert.All(found, changes => Assert.Contains(changes, smallest));
        Assert.Equal(found.Count, found.Distinct().Count());
        Assert.All(repairs, Works);
        Assert.All(repairs, IsAsNearAsCanBe);
    }

    private void Works(Repair repair)
    {
        var changed = repair.Changes.Aggregate(
            order,
            (sum, change) =>
                change.After == 0
                    ? sum.Without(change.Option)
                    : sum.With(change.Option, new(change.After, change.After))
        );
        Assert.Equal(changed.Picks, repair.Order.Picks);
        Assert.All(
            repair.Changes,
            change => Assert.Equal(order.Picks.GetValueOrDefault(change.Option, NumberRange.None), change.Before)
        );
        Assert.True(
            isComplete ? IsKept(Wanted(repair.Order)) : oracle.Within(repair.Order).Any(),
            "a repaired order does not work"
        );
    }

    /// <summary>Of all orders with the same changes its numbers come nearest to those ordered, one by one.</summary>
    private void IsAsNearAsCanBe(Repair repair)
    {
        var changed = Bits(repair.Changes.Select(change => change.Option));
        var left = (
            isComplete
                ? oracle.All.Where(way => ChangesTo(way) == changed)
                : oracle.Kept.Where(way => Dropped(way) == changed)
        )
            .Select(way => isComplete ? Completed(way) : way.Counts)
            .ToList();
        foreach (var (option, before, after) in repair.Changes.Where(change => oracle.Options.Contains(change.Option)))
        {
            var index = oracle.Options.IndexOf(option);
            var nearest = left.Select(counts => counts[index]).MinBy(count => (Distance(count, before), count));
            Assert.Equal(nearest, after);
            left.RemoveAll(counts => counts[index] != after);
        }
    }

    private static int Distance(int count, NumberRange range) =>
        count < range.From ? range.From - count
        : count > range.To ? count - range.To
        : 0;

    /// <summary>The picks that a way does not fit.</summary>
    private ulong Dropped(Way way) =>
        Bits(order.Picks.Where(pick => !pick.Value.Contains(oracle.CountOf(way, pick.Key))).Select(pick => pick.Key));

    /// <summary>What has to be changed to order that; null where a rule breaks once all has come along.</summary>
    private ulong? ChangesTo(Way wanted) =>
        !IsKept([.. wanted.Counts])
            ? null
            : Bits(
                _changeable.Where(option =>
                    !order.Picks.GetValueOrDefault(option, NumberRange.None).Contains(oracle.CountOf(wanted, option))
                )
            );

    private int[] Completed(Way wanted)
    {
        int[] counts = [.. wanted.Counts];
        Complete(counts);
        return counts;
    }

    private int[] Wanted(PartialOrder repaired) =>
        [.. oracle.Options.Select(option => repaired.Picks.TryGetValue(option, out var range) ? range.From : 0)];

    private bool IsKept(int[] counts)
    {
        Complete(counts);
        return oracle.All[oracle.IndexOf(counts)].Broken == 0;
    }

    /// <summary>Adds what comes along, in the smallest number there is, until nothing more does.</summary>
    private void Complete(int[] counts)
    {
        for (var hasGrown = true; hasGrown; )
        {
            hasGrown = false;
            foreach (var option in oracle.Options.Where((_, i) => counts[i] > 0))
            {
                foreach (
                    var index in oracle
                        .Machine.Options[option]
                        .ComesWith.Select(link => oracle.Options.IndexOf(link.Other.Value))
                )
                {
                    if (index >= 0 && counts[index] == 0)
                    {
                        counts[index] = oracle.Machine.Options[oracle.Options[index]].Quantity?.From ?? 1;
                        hasGrown = true;
                    }
                }
            }
        }
    }

    private ulong Bits(IEnumerable<OptionId> options) =>
        options.Aggregate(0UL, (bits, option) => bits | (1UL << _changeable.IndexOf(option)));
}
