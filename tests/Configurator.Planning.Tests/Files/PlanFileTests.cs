using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Planning.Tests.Support;

namespace Configurator.Planning.Tests.Files;

public class PlanFileTests
{
    private const string Head = "# yaml-language-server: $schema=../../site-templates/schemas/port-plan.v1.schema.json\n";

    private const string Old =
        Head
        + """
        # Agreed with the workshop.
        port-plan: cup-one
        homes:
          # Next to the door.
          counter/eye/1: front:2  # grey cable
          heads/valve/1: front:3
          # Nothing below.

        """;

    [Fact]
    public void There_is_one_line_for_each_home_in_the_order_of_the_text() =>
        Assert.Equal(
            Head + "port-plan: cup-one\nhomes:\n  a-b/eye/1: front:1\n  a/eye/1: direct\n  a/eye/10: m:3/pin-2\n  a/eye/2: m:3\n",
            Write(("a/eye/10", "m:3/pin-2"), ("a/eye/2", "m:3"), ("a-b/eye/1", "front:1"), ("a/eye/1", "direct"))
        );

    [Fact]
    public void A_plan_without_homes_says_so() =>
        Assert.Equal(Head + "port-plan: cup-one\nhomes: {}\n", Write());

    [Fact]
    public void Comments_stay_with_their_lines() =>
        Assert.Equal(Old, PlanFile.Write(new("cup-one"), PlanFile.Read(Old), None, Old));

    [Fact]
    public void A_new_home_is_one_new_line()
    {
        var homes = PlanFile.Read(Old).Add(Key("door/eye/1"), Home.Parse("front:4")!.Value);

        Assert.Equal(
            Old.Replace("  heads/", "  door/eye/1: front:4\n  heads/", StringComparison.Ordinal),
            PlanFile.Write(new("cup-one"), homes, None, Old)
        );
    }

    [Fact]
    public void A_home_that_is_gone_takes_its_comments_along()
    {
        var text = PlanFile.Write(new("cup-one"), PlanFile.Read(Old).Remove(Key("counter/eye/1")), None, Old);

        Assert.Equal(
            Old.Replace("  # Next to the door.\n  counter/eye/1: front:2  # grey cable\n", "", StringComparison.Ordinal),
            text
        );
    }

    [Fact]
    public void What_is_quoted_or_ends_as_on_other_systems_is_read_alike() =>
        Assert.Equal(
            PlanFile.Read("homes:\n  a/eye/1: front:2\n  b/eye/1: direct\n"),
            PlanFile.Read("homes:\r\n  \"a/eye/1\": 'front:2'\r\n  b/eye/1: direct # box\r\n")
        );

    [Fact]
    public void A_line_that_is_no_home_is_left_out() =>
        Assert.Equal(
            [Key("a/eye/1")],
            PlanFile.Read("homes:\n  a/eye/1: front:2\n  a/eye: front:3\n  b/eye/1: somewhere\n").Keys
        );

    [Fact]
    public void What_a_fit_takes_of_the_box_is_one_line_and_comments_stay_with_it()
    {
        const string Text = Head + "port-plan: cup-one\nhomes:\n  a/eye/1: direct  # at the door\nbox:\n"
            + "  # Wired by the shop.\n  a/eye/1: {safety-inputs: [1, 12], inputs: [3]}  # pulled\n  b/drive/1: {torque-off: [2]}\n";

        Assert.Equal(Text, PlanFile.Write(new("cup-one"), PlanFile.Read(Text), PlanFile.ReadPoints(Text), Text));
    }

    [Fact]
    public void A_renamed_option_keeps_its_numbers_in_the_box()
    {
        const string Former = """
            box:
              room-gas/room-oxygen/1: {safety-inputs: [31, 32]}
              gone/lamp/1: {outputs: [9]}
            """;
        var machine = Demo.Whole.Logic("pantry-four").Machine;
        var renamed = machine with
        {
            Plan = machine.Plan with { Points = machine.Plan.Points.Remove(Key("oxygen-sensing/room-oxygen/1")) },
            Instances =
            [
                .. machine.Instances.Select(instance =>
                    instance.Option is { } option && option.Id.Value.Value == "oxygen-sensing"
                        ? instance with { Option = option with { Formerly = [new("room-gas", default)] } }
                        : instance
                ),
            ],
        };

        var kept = FormerPoints.Carry(renamed, Homes, PlanFile.ReadPoints(Former));

        Assert.Equal([31, 32], kept.PointsOf(Key("oxygen-sensing/room-oxygen/1"), BoxPoint.SafetyInput));
        Assert.False(kept.Points.ContainsKey(Key("gone/lamp/1")));
        Assert.Equal(machine.Plan.PointsOf(Key("standard/guard-infeed/1"), BoxPoint.SafetyInput), kept.PointsOf(Key("standard/guard-infeed/1"), BoxPoint.SafetyInput));
    }

    private static ImmutableSortedDictionary<InstanceKey, Home> Homes => ImmutableSortedDictionary<InstanceKey, Home>.Empty;

    private static ImmutableSortedDictionary<InstanceKey, BoxPins> None => ImmutableSortedDictionary<InstanceKey, BoxPins>.Empty;

    private static string Write(params (string Key, string Home)[] lines) =>
        PlanFile.Write(
            new("cup-one"),
            lines.ToImmutableSortedDictionary(line => Key(line.Key), line => Home.Parse(line.Home)!.Value),
            None,
            old: null
        );

    private static InstanceKey Key(string text) => InstanceKey.Parse(text)!.Value;
}
