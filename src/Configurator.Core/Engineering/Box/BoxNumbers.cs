using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Box;

/// <summary>Which inputs, outputs and ports of the box each fit takes: the same in every order of the machine. Fits
/// that can never be ordered together may take the same ones, as they may share a port.</summary>
public sealed record BoxNumbers(ImmutableSortedDictionary<InstanceKey, BoxPins> Pins)
{
    /// <summary>Of a machine whose rules cannot be asked.</summary>
    public static BoxNumbers None { get; } = new(ImmutableSortedDictionary<InstanceKey, BoxPins>.Empty);

    /// <summary>Empty for what takes none.</summary>
    public ImmutableArray<int> Of(BoxPoint point, InstanceKey key) =>
        Pins.TryGetValue(key, out var pins) ? pins.Of(point) : [];

    public static BoxNumbers Of(OrderLogic logic) => Of(logic, logic.Machine.Plan);

    /// <summary>What the plan keeps stays; then the standard machine, then options by key: each takes the lowest
    /// numbers that are free in every order that has it.</summary>
    public static BoxNumbers Of(OrderLogic logic, PortPlan plan) =>
        new(
            BoxTakers
                .Of(logic.Machine, plan)
                .SelectMany(takers =>
                    Numbered(logic, plan, takers.Key, [.. takers])
                        .Select(own => (own.Key, Point: takers.Key, own.Numbers))
                )
                .GroupBy(own => own.Key)
                .ToImmutableSortedDictionary(
                    own => own.Key,
                    own => new BoxPins(own.ToImmutableSortedDictionary(pair => pair.Point, pair => pair.Numbers))
                )
        );

    private static IEnumerable<(InstanceKey Key, ImmutableArray<int> Numbers)> Numbered(
        OrderLogic logic,
        PortPlan plan,
        BoxPoint point,
        ImmutableArray<(FitInstance Instance, int Count)> takers
    )
    {
        var proof = ConditionProof.Of(logic, [.. takers.Select(taker => FitConditions.Of(taker.Instance))]);
        ImmutableArray<int>[] taken = [.. takers.Select(taker => Kept(plan, point, taker))];
        for (var i = 0; i < takers.Length; i++)
        {
            if (taken[i].IsEmpty)
            {
                var barred = Enumerable
                    .Range(0, takers.Length)
                    .Where(other => !taken[other].IsEmpty && proof.IsPossible([other, i], []))
                    .SelectMany(other => taken[other]);
                taken[i] = Lowest(takers[i].Count, [.. barred, .. Reserved(logic.Machine, point)]);
            }
        }

        return takers.Select((taker, i) => (taker.Instance.Key, taken[i]));
    }

    /// <summary>Numbers in the plan that are no longer as many as the fit takes say nothing.</summary>
    private static ImmutableArray<int> Kept(PortPlan plan, BoxPoint point, (FitInstance Instance, int Count) taker) =>
        plan.PointsOf(taker.Instance.Key, point) is { } kept && kept.Length == taker.Count ? kept : [];

    private static IEnumerable<int> Reserved(Machine machine, BoxPoint point) =>
        point == BoxPoint.Network && !machine.Control.Masters.IsEmpty ? [NetworkOffer.TrunkPort] : [];

    private static ImmutableArray<int> Lowest(int count, HashSet<int> barred) =>
        [.. Enumerable.Range(1, barred.Count + count).Where(number => !barred.Contains(number)).Take(count)];
}
