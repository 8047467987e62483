using System.Diagnostics;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Machines as large as they come. What a plan took is printed, not judged.</summary>
public class SizeTests(ITestOutputHelper output)
{
    [Fact]
    public void Forty_fits_on_five_masters_are_planned_with_a_stated_bound() =>
        Plan(11, 40, 8, 5, new(0.5, 0.5, 0.25));

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void A_hundred_and_twenty_fits_on_twelve_masters_are_planned_with_a_stated_bound() =>
        Plan(12, 120, 12, 12, PlanEffort.Usual);

    private void Plan(int number, int fits, int options, int masters, PlanEffort effort)
    {
        var rig = RandomRigs.Roomy(number, fits, options, masters);
        var facts = new RigFacts(rig);
        var logic = RigText.Logic(rig);
        var watch = Stopwatch.StartNew();
        var plan = Planner.Plan(logic, RigPlanner.NoHomes, PlanMode.KeepHomes, effort);
        output.WriteLine(
            FormattableString.Invariant(
                $"{fits} fits, {masters} masters, {facts.Configurations.Length} configurations: {watch.Elapsed.TotalSeconds:0.0} s"
            )
        );
        output.WriteLine(PlanReport.Of(plan));

        var placed = Placement.Of(facts, plan);
        Assert.Null(new Judge(facts).Fault(placed));
        Assert.All(plan.Stages, stage => Assert.True(stage.Bound <= stage.Value, stage.ToString()));
        Assert.Equal(new Judge(facts).Value(placed).Unplaced, plan.Unplaced.Length);
    }
}
