using Configurator.Planning.Tests.Support;

namespace Configurator.Planning.Tests.Laws;

/// <summary>The plans that the repository comes with.</summary>
public class DemoPlanTests
{
    private const string NewOption = """
        option: door-watch
        title: {en: Door watch, es: Vigilancia de puerta}
        summary: {en: Sees whether the service door is shut, es: Ve si la puerta de servicio está cerrada}
        offered-on: [MACHINE]
        fits:
          - fit: door-eye
            device: home-sensor
            stations: [STATION]
            purpose: {en: Sees the service door, es: Ve la puerta de servicio}

        """;

    public static TheoryData<string> Machines => [.. Demo.MachineIds];

    [Theory]
    [MemberData(nameof(Machines))]
    public void Planning_a_machine_again_changes_no_byte_of_its_plan(string machine)
    {
        var plan = Demo.Whole.Plan(machine);

        Assert.Empty(plan.Unplaced);
        Assert.Equal(Demo.Whole.TextOf(Demo.PlanPath(machine)), Demo.Whole.Written(plan));
    }

    // Source: the committed plans; a change of these numbers is a change of the demonstration or of the planner.
    [Theory]
    [InlineData("pantry-eight", "2 extensions, 36 into the box, 237588 ppm, 359500 mm, 62 ports")]
    [InlineData("pantry-four", "2 extensions, 32 into the box, 671726 ppm, 262500 mm, 49 ports")]
    [InlineData("spout-two", "2 extensions, 28 into the box, 785237 ppm, 180500 mm, 35 ports")]
    public void The_committed_plans_come_to_what_they_came_to(string machine, string expected) =>
        Assert.Equal(
            expected,
            Words(Demo.Whole.Plan(machine).Stages.ToDictionary(stage => stage.Stage, stage => stage.Value))
        );

    [Theory]
    [InlineData("pantry-eight", "outfeed")]
    [InlineData("pantry-four", "outfeed")]
    [InlineData("spout-two", "outfeed")]
    public void A_new_option_adds_one_line_and_changes_no_other(string machine, string station)
    {
        var text = NewOption
            .Replace("MACHINE", machine, StringComparison.Ordinal)
            .Replace("STATION", station, StringComparison.Ordinal);
        var demo = Demo.Whole.With("options/checking/door-watch.yaml", text);
        var before = demo.TextOf(Demo.PlanPath(machine)).Split('\n');
        var after = demo.Written(demo.Plan(machine)).Split('\n').ToList();

        var added = Assert.Single(after, line => line.Contains("door-watch", StringComparison.Ordinal));
        Assert.Matches("^  door-watch/door-eye/1: [a-z-]+:[0-9]+$", added);
        after.Remove(added);
        Assert.Equal(before, after);
    }

    [Trait("Length", "nightly")]
    [Theory(Explicit = true)]
    [MemberData(nameof(Machines))]
    public void Planning_with_the_fewest_moves_moves_no_more_than_planning_from_scratch(string machine)
    {
        var few = Demo.Whole.Plan(machine, PlanMode.FewestMoves);
        var scratch = Demo.Whole.Plan(machine, PlanMode.FromScratch);

        Assert.True(few.Moved.Count() <= scratch.Moved.Count(), $"{few.Moved.Count()} > {scratch.Moved.Count()}");
        Assert.Empty(few.Unplaced);
        Assert.Empty(scratch.Unplaced);
    }

    [Fact]
    public void Every_configuration_of_the_demonstration_keeps_the_rules_with_the_committed_plans() =>
        Assert.All(
            Demo.Whole.Engineered().AllOrders.Values,
            report => Assert.True(report.Holds, report.Machine.Id.Value.Value)
        );

    private static string Words(Dictionary<PlanStage, long> values)
    {
        Assert.Equal((0, 0), (values[PlanStage.Unplaced], values[PlanStage.SpareTaken]));
        return FormattableString.Invariant(
            $"{values[PlanStage.Extensions]} extensions, {values[PlanStage.BoxCables]} into the box, {values[PlanStage.OrdersWithExtension]} ppm, {values[PlanStage.Cable]} mm, {values[PlanStage.Ports]} ports"
        );
    }
}
