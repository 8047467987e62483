using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Definitions;
using Configurator.Core.Tests.Engineering.Rigs;
using Configurator.Planning.Tests.Rigs;

namespace Configurator.Planning.Tests.Laws;

/// <summary>What holds for the plan of any machine.</summary>
public class RigLawTests
{
    private const int Cases = 15;

    /// <summary>The tightest rule of the checker that a plan may break on purpose, and says so: no port at all.</summary>
    private static readonly ImmutableHashSet<string> SaidByThePlan = ["ports.home", "ports.spare"];

    [Fact]
    public void An_option_more_moves_no_home() =>
        ForAll(
            1,
            (number, rig, logic) =>
            {
                var last = $"o{rig.Options - 1}";
                var early = rig with { Fits = [.. rig.Fits.Where(fit => fit.Source != last)] };
                var homes = RigPlanner.Plan(RigText.Logic(early)).Homes;

                var plan = RigPlanner.Plan(logic, homes.Only(_ => true));

                Assert.All(homes, home => Assert.Equal(home.Value, plan.Homes[home.Key]));
                Assert.Empty(plan.Moved);
            }
        );

    [Fact]
    public void The_order_in_which_definitions_are_read_changes_nothing() =>
        ForAll(
            2,
            (number, rig, logic) =>
            {
                var dice = new Dice(number);
                var shuffled = RigText.Logic(rig, files => files.OrderBy(_ => dice.Below(int.MaxValue)).ToList());

                Assert.Equal(RigPlanner.Plan(logic).Homes, RigPlanner.Plan(shuffled).Homes);
            }
        );

    [Fact]
    public void Every_configuration_passes_the_checks_with_a_plan_that_places_everything() =>
        ForAll(
            3,
            (number, rig, logic) =>
            {
                var plan = RigPlanner.Plan(logic);
                var machine = logic.Machine with { Plan = PlanOf(plan) };
                var orders = Weigher.Of(logic).Sample(PartialOrder.Empty, 20, (ulong)number)!.Value;

                Assert.All(orders, order => Assert.Empty(Failing(machine, order, plan)));
            }
        );

    [Fact]
    public void Planning_with_the_fewest_moves_moves_no_more_than_planning_from_scratch() =>
        ForAll(
            4,
            (number, rig, logic) =>
            {
                var early = rig with { Fits = [.. rig.Fits.Where((_, i) => (i + number) % 3 > 0)] };
                var homes = RigPlanner.Plan(RigText.Logic(early)).Homes.Only(_ => true);

                var few = RigPlanner.Plan(logic, homes, PlanMode.FewestMoves);
                var scratch = RigPlanner.Plan(logic, homes, PlanMode.FromScratch);

                Assert.True(few.Moved.Count() <= scratch.Moved.Count(), $"{few.Moved.Count()} {scratch.Moved.Count()}");
            }
        );

    [Fact]
    public void A_plan_written_and_read_is_the_same_plan() =>
        ForAll(
            5,
            (number, rig, logic) =>
            {
                var homes = RigPlanner.Plan(logic).Homes;
                var text = PlanFile.Write(logic.Machine.Id.Value, homes, BoxNumbers.Of(logic).Pins, old: null);

                Assert.Equal(homes, PlanFile.Read(text));
                Assert.Equal(text, PlanFile.Write(logic.Machine.Id.Value, homes, PlanFile.ReadPoints(text), text));
            }
        );

    [Fact]
    public void Planning_again_keeps_every_home_and_adds_none() =>
        ForAll(
            6,
            (number, rig, logic) =>
            {
                var homes = RigPlanner.Plan(logic).Homes;

                Assert.Equal(homes, RigPlanner.Plan(logic, homes).Homes);
            }
        );

    private static IEnumerable<string> Failing(Machine machine, Configuration order, PlanResult plan) =>
        Engineer
            .Compute(machine, order, machine.Plan)
            .Findings.Where(finding => finding.Verdict == Verdict.Fail)
            .Where(finding => !SaidByThePlan.Contains(finding.Rule.Name) || IsWhole(plan))
            .Select(finding => $"{finding.Id}: {finding.Statement}");

    private static bool IsWhole(PlanResult plan) =>
        plan.Stages.All(stage => stage.Stage is not (PlanStage.Unplaced or PlanStage.SpareTaken) || stage.Value == 0);

    private static PortPlan PlanOf(PlanResult plan) =>
        new(
            plan.Homes.ToImmutableSortedDictionary(
                home => home.Key,
                home => new Core.Sources.Located<Home>(home.Value, default)
            ),
            default
        );

    private static void ForAll(int stream, Action<int, Rig, OrderLogic> law) =>
        Parallel.For(
            0,
            Cases,
            i =>
            {
                var number = 700_000 + (stream * 1000) + i;
                var rig = RandomRigs.Tiny(number, 8);
                law(number, rig, RigText.Logic(rig));
            }
        );
}
