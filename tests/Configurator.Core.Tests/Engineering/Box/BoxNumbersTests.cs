using System.Collections.Immutable;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Box;

/// <summary>Numbers of inputs, outputs and ports of the box.</summary>
public class BoxNumbersTests
{
    private const string BackGuard = """
        option: back-guard
        title: Guard at the back
        summary: Closes the back
        offered-on: [cup-one]
        fits:
          - {fit: back-switch, device: guard-switch, stations: [outfeed], purpose: Sees it closed, wiring: direct}

        """;

    public static TheoryData<string> Machines { get; } = [.. DemoCatalogue.Machines.Select(machine => machine.Id.Value.Value)];

    // Law: what can be ordered together never shares a number.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Fits_that_share_a_number_can_never_be_ordered_together(string name)
    {
        var logic = LogicOf(name);
        var numbers = BoxNumbers.Of(logic);
        var fits = logic.Machine.Instances.ToDictionary(instance => instance.Key, FitConditions.Of);
        foreach (var point in Enum.GetValues<BoxPoint>())
        {
            ImmutableArray<InstanceKey> keys = [.. numbers.Pins.Keys.Where(key => !numbers.Of(point, key).IsEmpty)];
            var proof = ConditionProof.Of(logic, [.. keys.Select(key => fits[key])]);
            Assert.All(
                from one in Enumerable.Range(0, keys.Length)
                from other in Enumerable.Range(0, one)
                where numbers.Of(point, keys[one]).Intersect(numbers.Of(point, keys[other])).Any()
                select (one, other),
                pair => Assert.False(proof.IsPossible([pair.one, pair.other], []), $"{keys[pair.one]} {keys[pair.other]}"));
        }
    }

    // Law: what is numbered without a plan is numbered as low as the box goes.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Numbers_stay_within_what_the_box_offers(string name)
    {
        var logic = LogicOf(name);
        var numbers = BoxNumbers.Of(logic, logic.Machine.Plan with { Points = Nothing });
        Assert.All(
            Enum.GetValues<BoxPoint>(),
            point => Assert.InRange(
                numbers.Pins.Values.SelectMany(pins => pins.Of(point)).Max(), 1, logic.Machine.Control.Box.OfferOf(point)!.Value));
    }

    // Law: one architecture, every option an addition. Whatever option comes last, no wire of the others moves.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Whatever_option_comes_last_moves_no_number(string name)
    {
        var logic = LogicOf(name);
        var whole = logic.Machine.Plan;
        Assert.All(
            whole.Points.Keys.Select(key => key.Source).Distinct(StringComparer.Ordinal),
            last =>
            {
                var before = whole with { Points = whole.Points.RemoveRange(whole.Points.Keys.Where(key => key.Source == last)) };
                var after = BoxNumbers.Of(logic, before);
                Assert.All(before.Points, line => Assert.Equal(Written(line.Value.Value), Written(after.Pins[line.Key])));
                Assert.Equal(whole.Points.Keys, after.Pins.Keys);
            });
    }

    // By hand: the standard guard has channels 1 and 2; an option's guard comes after it.
    [Fact]
    public void The_standard_machine_is_numbered_first()
    {
        var numbers = BoxNumbers.Of(OrderLogic.Of(WithBackGuard().Catalogue.Machines[SmallCatalogue.MachineId]));
        Assert.Equal([1, 2], numbers.Of(BoxPoint.SafetyInput, new("standard", new("guard"), 1)));
        Assert.Equal([3, 4], numbers.Of(BoxPoint.SafetyInput, new("back-guard", new("back-switch"), 1)));
    }

    // By hand: the plan keeps 4 and 7 for the option's guard; the standard guard gets the lowest that are left.
    [Fact]
    public void What_a_plan_keeps_stays_and_the_rest_goes_around_it()
    {
        var check = WithBackGuard("\nbox:\n  back-guard/back-switch/1: {safety-inputs: [1, 3]}\n");
        var numbers = BoxNumbers.Of(OrderLogic.Of(check.Catalogue.Machines[SmallCatalogue.MachineId]));
        Assert.Equal([1, 3], numbers.Of(BoxPoint.SafetyInput, new("back-guard", new("back-switch"), 1)));
        Assert.Equal([2, 4], numbers.Of(BoxPoint.SafetyInput, new("standard", new("guard"), 1)));
    }

    // By hand: every core of a device that goes to a safety input or output is one that the device counts.
    [Fact]
    public void Devices_have_as_many_wires_to_safety_terminals_as_they_need() => Assert.All(
        DemoCatalogue.Whole.Devices.Values.Where(device => device.Leads is not null || !device.Terminals.IsEmpty),
        device => Assert.Equal(
            (device.Id.Value.Value, device.Safety?.Inputs ?? 0, device.Safety?.Outputs ?? 0),
            (device.Id.Value.Value, Count(device, CoreTarget.SafetyInput), Count(device, CoreTarget.SafetyOutput))));

    private static Check WithBackGuard(string box = "") =>
        Check.Small
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: terminals\nsafety: {inputs: 2}")
            .Changing(SmallCatalogue.PortPlan, "standard/guard/1: direct", $"standard/guard/1: direct\n  back-guard/back-switch/1: direct{box}")
            .With(BackGuard);

    private static OrderLogic LogicOf(string name) =>
        OrderLogic.Of(DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == name));

    private static ImmutableSortedDictionary<InstanceKey, Located<BoxPins>> Nothing =>
        ImmutableSortedDictionary<InstanceKey, Located<BoxPins>>.Empty;

    private static string Written(BoxPins pins) =>
        string.Join("; ", pins.Numbers.Select(own => $"{own.Key}: {string.Join(' ', own.Value)}"));

    private static int Count(Device device, CoreTarget target) =>
        (device.Leads?.Cores.Count(core => core.LeadsTo == target) ?? 0) + device.Terminals.Count(terminal => terminal.LeadsTo == target);
}
