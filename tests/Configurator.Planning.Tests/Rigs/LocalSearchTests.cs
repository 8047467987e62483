using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Machines too large for brute force.</summary>
public class LocalSearchTests
{
    private const int Steps = 1000;
    private static readonly PlanEffort Short = new(1, 1, 0.25);

    [Theory]
    [InlineData(1, 20, 3)]
    [InlineData(2, 25, 4)]
    public void No_random_search_finds_a_better_plan(int number, int fits, int masters) =>
        Check(number, fits, masters, Short);

    [Trait("Length", "nightly")]
    [Theory(Explicit = true)]
    [InlineData(5, 30, 4)]
    [InlineData(6, 30, 4)]
    [InlineData(7, 35, 5)]
    [InlineData(8, 40, 5)]
    [InlineData(4, 40, 6)]
    public void No_random_search_finds_a_better_plan_of_a_large_machine(int number, int fits, int masters) =>
        Check(number, fits, masters, PlanEffort.Usual);

    private static void Check(int number, int fits, int masters, PlanEffort effort)
    {
        var rig = RandomRigs.Roomy(number, fits, 7, masters);
        var facts = new RigFacts(rig);
        var plan = Planner.Plan(RigText.Logic(rig), RigPlanner.NoHomes, PlanMode.KeepHomes, effort);
        var placed = Placement.Of(facts, plan);
        var value = new Judge(facts).Value(placed);
        Assert.Null(new Judge(facts).Fault(placed));

        // One that starts with nothing, and one that starts with the plan itself.
        var search = new LocalSearch(facts, number);
        var found = search.Improve(search.Greedy(), Steps);
        var improved = new LocalSearch(facts, number + 100).Improve(placed, Steps);

        Assert.False(found.IsBetterThan(value), $"{found}\n{value}");
        Assert.False(improved.IsBetterThan(value), $"{improved}\n{value}");
    }
}
