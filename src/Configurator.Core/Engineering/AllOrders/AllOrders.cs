using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.AllOrders;

/// <summary>The worst result of a check over all configurations of a machine, and the configuration that comes
/// closest to its limit or goes furthest beyond.</summary>
/// <param name="IsProved">No other configuration does worse.</param>
public sealed record WorstFinding(Finding Finding, Configuration Configuration, bool IsProved);

/// <summary>In how many configurations something is the case; null where they are not counted.</summary>
public sealed record OrderShare(BigInteger? Configurations, BigInteger? Total)
{
    /// <summary>The share of extensions by the declared order mix; null where there is none, or it is not
    /// computed.</summary>
    public Rational? ByMix { get; init; }
}

/// <summary>What holds for every configuration of a machine, published or not.</summary>
/// <param name="Findings">The worst of each check, by id.</param>
/// <param name="Extensions">In how many configurations each extension master is fitted.</param>
/// <param name="Ports">In how many configurations each port of the plan is used.</param>
public sealed record AllOrdersReport(
    Machine Machine,
    ImmutableArray<WorstFinding> Findings,
    ImmutableSortedDictionary<MasterName, OrderShare> Extensions,
    ImmutableDictionary<Home, OrderShare> Ports
)
{
    /// <summary>The most severe washing of each part; empty where the machine does not say how it is
    /// cleaned.</summary>
    public ImmutableArray<WorstWash> Washed { get; init; } = [];

    public bool Holds => Findings.All(worst => !worst.Finding.IsObstacle);
}

/// <summary>Proves the checks for all configurations of a machine with the homes of its port plan.</summary>
internal static class AllOrdersProof
{
    public static AllOrdersReport Of(OrderLogic logic)
    {
        var machine = logic.Machine;
        ImmutableArray<WeightedSum> sums = [.. WorstCases.Of(machine)];
        List<Condition> mounted =
        [
            .. FitConditions.Sound(machine).Select(FitConditions.Of),
            .. HygieneWorst.Of(machine),
        ];
        var users = Users(machine);
        var weigher = Weigher.Of(
            logic,
            sums.SelectMany(sum => sum.Terms)
                .Select(term => term.When)
                .Concat(mounted)
                .Concat(users.Values)
                .Concat(Extensions(machine).Select(master => FitConditions.Of(machine, master)))
        );
        var total = logic.Count(PartialOrder.Empty);
        ImmutableArray<Extreme> witnesses = [.. Witnesses(weigher, sums, mounted)];
        return new(
            machine,
            Worst(machine, witnesses),
            Extensions(machine)
                .ToImmutableSortedDictionary(
                    master => master.Name.Value,
                    master => ShareByMix(FitConditions.Of(machine, master))
                ),
            users.ToImmutableDictionary(port => port.Key, port => Share(port.Value))
        )
        {
            Washed = [.. WorstWash.Of(machine, weigher, [.. witnesses.Select(extreme => extreme.Witness)])],
        };

        OrderShare Share(Condition condition) => new(weigher.Count(condition, PartialOrder.Empty), total);

        OrderShare ShareByMix(Condition condition) =>
            Share(condition) with
            {
                ByMix = machine.OrderMix.IsEmpty
                    ? null
                    : weigher.Mean(new(0, [new(condition, 1)]), PartialOrder.Empty, machine.OrderMix),
            };
    }

    private static IEnumerable<Master> Extensions(Machine machine) =>
        machine.Control.Masters.Where(master => master.IsExtension);

    /// <summary>For each port of the plan: is anything plugged in?</summary>
    private static Dictionary<Home, Condition> Users(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(instance => machine.Plan.HomeOf(instance.Key) is { IsDirect: false })
            .GroupBy(instance => machine.Plan.HomeOf(instance.Key)!.Value with { IsPinTwo = false })
            .ToDictionary(
                port => port.Key,
                Condition (port) => new AnyOf([.. port.Select(FitConditions.Of)], port.First().Fit.Name.Span)
            );

    /// <summary>The heaviest configuration of each sum, and enough others that everything is mounted in
    /// some.</summary>
    private static IEnumerable<Extreme> Witnesses(
        Weigher weigher,
        ImmutableArray<WeightedSum> sums,
        List<Condition> mounted
    )
    {
        var seen = new List<Extreme>();
        foreach (var sum in sums)
        {
            if (weigher.Heaviest(sum, PartialOrder.Empty) is { } heaviest)
            {
                seen.Add(heaviest);
                yield return heaviest;
            }
        }

        var missing = mounted
            .Where(condition => !seen.Exists(extreme => condition.Holds(extreme.Witness.QuantityOf)))
            .ToList();
        while (missing.Count > 0)
        {
            var wanted = new WeightedSum(0, [.. missing.Select(condition => new WeightedTerm(condition, 1))]);
            if (weigher.Heaviest(wanted, PartialOrder.Empty) is not { Weight: > 0 } extreme)
            {
                yield break;
            }

            missing.RemoveAll(condition => condition.Holds(extreme.Witness.QuantityOf));
            yield return extreme;
        }
    }

    private static ImmutableArray<WorstFinding> Worst(Machine machine, ImmutableArray<Extreme> witnesses)
    {
        var isProved = witnesses.All(extreme => extreme.IsProved);
        return
        [
            .. witnesses
                .Select(extreme => extreme.Witness)
                .DistinctBy(Key, StringComparer.Ordinal)
                .SelectMany(configuration =>
                    Engineer
                        .Compute(machine, configuration, machine.Plan)
                        .Findings.Select(finding => new WorstFinding(finding, configuration, isProved))
                )
                .GroupBy(worst => worst.Finding.Id, StringComparer.Ordinal)
                .Select(group => group.Aggregate((worst, next) => IsWorse(next.Finding, worst.Finding) ? next : worst))
                .OrderBy(worst => worst.Finding.Id, StringComparer.Ordinal),
        ];
    }

    private static bool IsWorse(Finding one, Finding other) =>
        one.Verdict != other.Verdict
            ? Rank(one.Verdict) > Rank(other.Verdict)
            : one.Margin is { } margin && other.Margin is { } least && margin.Value < least.Value;

    /// <summary>Failed is worst, then what nobody can say.</summary>
    private static int Rank(Verdict verdict) =>
        verdict switch
        {
            Verdict.Fail => 3,
            Verdict.Unstated => 2,
            Verdict.Review => 1,
            _ => 0,
        };

    private static string Key(Configuration configuration) =>
        string.Join(
            ' ',
            configuration.Quantities.Select(pick => FormattableString.Invariant($"{pick.Key}={pick.Value}"))
        );
}
