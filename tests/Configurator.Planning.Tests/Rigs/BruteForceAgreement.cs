using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>The planner's plan of a rig beside the best there is.</summary>
/// <param name="Fault">In what they differ; null where they agree.</param>
/// <param name="IsBoundExact">The bound on currents leaves the best plan possible.</param>
internal sealed record BruteForceAgreement(Rig Rig, string? Fault, bool IsBoundExact, int StagesProved, long Leaves)
{
    public static BruteForceAgreement On(
        Rig rig,
        OrderLogic logic,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        PlanMode mode
    )
    {
        var facts = new RigFacts(rig);
        var plan = RigPlanner.Plan(logic, homes, mode);
        var old = Placement.Of(facts, plan with { Homes = homes });
        var best = new BruteForce(facts, old, mode == PlanMode.FewestMoves).Run();
        var isExact = best.BestWithinBound!.Equals(best.Best);
        return new(
            rig,
            Difference(facts, plan, best) ?? Kept(plan, homes, mode),
            isExact,
            plan.Stages.Count(stage => stage.IsProved),
            best.Leaves
        );
    }

    private static string? Difference(RigFacts facts, PlanResult plan, BruteForce best)
    {
        var judge = new Judge(facts);
        var placed = Placement.Of(facts, plan);
        var moves = plan.Stages.FirstOrDefault(stage => stage.Stage == PlanStage.Moves)?.Value ?? 0;
        var value = judge.Value(placed, moves);
        if (judge.Fault(placed) is { } fault)
        {
            return fault;
        }

        var expected = best.BestWithinBound!;
        var wrong = plan
            .Stages.Where(stage => value.Of(stage.Stage) != stage.Value || stage.Bound > stage.Value)
            .Select(stage => $"stage {stage.Stage} says {stage.Value}, the plan comes to {value.Of(stage.Stage)}")
            // A plan may move less than the stage says: a fit that shares a port in another way keeps its number.
            .Concat(
                plan.Stages.TakeWhile(stage => stage.IsProved)
                    .Where(stage => stage.Value != expected.Of(stage.Stage))
                    .Select(stage => $"stage {stage.Stage}: {stage.Value} said to be proved, {expected.Of(stage.Stage)} is best")
            )
            .ToList();
        return wrong.Count > 0 ? $"{wrong[0]}\n{value}\n{expected}"
            : value.IsBetterThan(expected) ? $"brute force missed {value}, has {expected}"
            : best.Best!.CompareTo(expected) > 0 ? "the bound allows what the rule does not"
            : null;
    }

    private static string? Kept(PlanResult plan, ImmutableSortedDictionary<InstanceKey, Home> homes, PlanMode mode) =>
        mode == PlanMode.KeepHomes
        && homes.Any(home => !plan.Homes.TryGetValue(home.Key, out var now) || now != home.Value)
            ? "a home moved or got lost"
            : plan.Stages.FirstOrDefault(stage => stage.Stage == PlanStage.Moves) is { } moves
            && plan.Moved.Count() > moves.Value
                ? $"{plan.Moved.Count()} homes moved, {moves.Value} said"
                : null;
}
