using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Safety;

/// <summary>Which safety inputs, safety outputs and fast inputs of the box each fit takes: the same in every order of
/// the machine. Fits that can never be ordered together may take the same ones, as they may share a port.</summary>
public sealed record BoxNumbers(
    ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> SafetyInputs,
    ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> SafetyOutputs,
    ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> FastInputs
)
{
    /// <summary>Of a machine whose rules cannot be asked.</summary>
    public static BoxNumbers None { get; } =
        new(
            ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>>.Empty,
            ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>>.Empty,
            ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>>.Empty
        );

    /// <summary>The standard machine first, then options by key: each takes the lowest numbers that are free in every
    /// order that has it.</summary>
    public static BoxNumbers Of(OrderLogic logic)
    {
        var signals = SignalList.OfAllOrders(logic.Machine).ToLookup(signal => signal.Kind);
        return new(
            Numbered(logic, signals[SignalKind.SafetyInput]),
            Numbered(logic, signals[SignalKind.SafetyOutput]),
            Numbered(logic, signals[SignalKind.FastInput])
        );
    }

    private static ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> Numbered(
        OrderLogic logic,
        IEnumerable<Signal> signals
    )
    {
        ImmutableArray<IGrouping<FitInstance, Signal>> takers =
        [
            .. signals
                .GroupBy(signal => signal.Instance)
                .OrderBy(taker => taker.Key.Option is not null)
                .ThenBy(taker => taker.Key.Key),
        ];
        var proof = ConditionProof.Of(logic, [.. takers.Select(taker => FitConditions.Of(taker.Key))]);
        var taken = new List<ImmutableArray<int>>();
        foreach (var taker in takers)
        {
            var barred = taken
                .Where((_, other) => proof.IsPossible([other, taken.Count], []))
                .SelectMany(numbers => numbers);
            taken.Add(Lowest(taker.Count(), [.. barred]));
        }

        return takers.Select((taker, i) => KeyValuePair.Create(taker.Key.Key, taken[i])).ToImmutableSortedDictionary();
    }

    private static ImmutableArray<int> Lowest(int count, HashSet<int> barred) =>
        [.. Enumerable.Range(1, barred.Count + count).Where(number => !barred.Contains(number)).Take(count)];
}
