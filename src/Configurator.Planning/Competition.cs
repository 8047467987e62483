using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>A fit that found no port, and why.</summary>
/// <param name="Reasons">What keeps it from each master and hub, in words.</param>
/// <param name="Rivals">Fits that take the ports it could use.</param>
/// <param name="Proof">Ports that can do for it, how many of them one order wants, and that order; null where every
/// order alone would find room.</param>
/// <param name="Helps">What would let everything be placed, each tried out.</param>
public sealed record UnplacedFit(
    FitInstance Fit,
    ImmutableArray<string> Reasons,
    ImmutableArray<InstanceKey> Rivals,
    (int Ports, long Wanted, Configuration Order)? Proof,
    ImmutableArray<string> Helps
);

/// <summary>Says which fits compete for which ports, and what would help.</summary>
internal static class Competition
{
    private static readonly ImmutableArray<(SpotFault Fault, string Says)> Waivable =
    [
        (SpotFault.Reach, "a longer cable, or a master nearer by"),
        (SpotFault.Current, "a device that draws less, or a port that gives more"),
        (SpotFault.PortClass, "a port of another class"),
    ];

    public static UnplacedFit Of(
        OrderLogic logic,
        PlanProblem problem,
        PlanItem item,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        PlanMode mode,
        PlanEffort effort
    )
    {
        var usable = problem.GroupsOf(item).ToList();
        var confined = problem
            .Items.Where(other => problem.GroupsOf(other).Any() && problem.GroupsOf(other).All(usable.Contains))
            .ToList();
        return new(
            item.Instance,
            [.. Reasons(logic.Machine, problem, item)],
            [
                .. problem
                    .Items.Where(other => other != item && problem.GroupsOf(other).Any(usable.Contains))
                    .Select(other => other.Key),
            ],
            Proof(logic, usable, confined),
            [.. Helps(logic, homes, mode, effort)]
        );
    }

    private static IEnumerable<string> Reasons(Machine machine, PlanProblem problem, PlanItem item) =>
        problem
            .Groups.Select(group => (Group: group, Spot: PlanSpot.Of(machine, item.Instance, group.Name, group.Class)))
            .Where(pair => !pair.Spot.IsPossible)
            .Select(pair => $"`{pair.Group.Name}` class {pair.Group.Class}: {pair.Spot.Reason}");

    /// <summary>The order that wants most of these ports, where it wants more than there are.</summary>
    private static (int, long, Configuration)? Proof(OrderLogic logic, List<PlanGroup> usable, List<PlanItem> confined)
    {
        var ports = usable.Sum(group => group.Ports.Length);
        var demand = new WeightedSum(
            0,
            [.. confined.Select(fit => new WeightedTerm(FitConditions.Of(fit.Instance), 1))]
        );
        return Weigher.Of(logic).Heaviest(demand, PartialOrder.Empty) is { } heaviest && heaviest.Weight > ports
            ? (ports, heaviest.Weight, heaviest.Witness)
            : null;
    }

    private static IEnumerable<string> Helps(
        OrderLogic logic,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        PlanMode mode,
        PlanEffort effort
    )
    {
        bool PlacesAll(PlanProblem problem, PlanMode how, bool withCurrent = true) =>
            new PlanSolver(problem, how, effort, withCurrent).FewestUnplaced() == 0;
        if (mode == PlanMode.KeepHomes && PlacesAll(ProblemBuilder.Of(logic, homes), PlanMode.FewestMoves))
        {
            yield return "moving homes: `plan --again fewest-moves` places everything";
        }

        if (PlacesAll(ProblemBuilder.Of(logic, homes), mode, withCurrent: false))
        {
            yield return "a master that gives more current in all, or devices that draw less";
        }

        foreach (var (fault, says) in Waivable)
        {
            if (PlacesAll(ProblemBuilder.Of(logic, homes, fault), mode))
            {
                yield return says;
            }
        }
    }
}
