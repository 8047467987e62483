using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Numbers of inputs and outputs of the box.</summary>
public class BoxNumbersTests
{
    public static TheoryData<string> Machines { get; } = [.. DemoCatalogue.Machines.Select(machine => machine.Id.Value.Value)];

    // Law: what can be ordered together never shares a number.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Fits_that_share_a_number_can_never_be_ordered_together(string name)
    {
        var logic = OrderLogic.Of(DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == name));
        var numbers = BoxNumbers.Of(logic);
        var fits = logic.Machine.Instances.ToDictionary(instance => instance.Key, FitConditions.Of);
        foreach (var kind in new[] { numbers.SafetyInputs, numbers.SafetyOutputs, numbers.FastInputs })
        {
            ImmutableArray<InstanceKey> keys = [.. kind.Keys];
            var proof = ConditionProof.Of(logic, [.. keys.Select(key => fits[key])]);
            Assert.All(
                from one in Enumerable.Range(0, keys.Length)
                from other in Enumerable.Range(0, one)
                where kind[keys[one]].Intersect(kind[keys[other]]).Any()
                select (one, other),
                pair => Assert.False(proof.IsPossible([pair.one, pair.other], []), $"{keys[pair.one]} {keys[pair.other]}"));
        }
    }

    // Law: no number is beyond what the box has.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Numbers_stay_within_what_the_box_offers(string name)
    {
        var logic = OrderLogic.Of(DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == name));
        var (numbers, box) = (BoxNumbers.Of(logic), logic.Machine.Control.Box);
        Assert.InRange(numbers.SafetyInputs.Values.SelectMany(own => own).Max(), 1, box.Safety!.Inputs);
        Assert.InRange(numbers.SafetyOutputs.Values.SelectMany(own => own).Max(), 1, box.Safety!.Outputs);
        Assert.InRange(numbers.FastInputs.Values.SelectMany(own => own).Max(), 1, box.DirectInputs);
    }

    // By hand: the standard guard has channels 1 and 2; an option's guard comes after it.
    [Fact]
    public void The_standard_machine_is_numbered_first()
    {
        var check = Check.Small
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: terminals\nsafety: {inputs: 2}")
            .Changing(SmallCatalogue.PortPlan, "standard/guard/1: direct", "standard/guard/1: direct\n  back-guard/back-switch/1: direct")
            .With(
                """
                option: back-guard
                title: Guard at the back
                summary: Closes the back
                offered-on: [cup-one]
                fits:
                  - {fit: back-switch, device: guard-switch, stations: [outfeed], purpose: Sees it closed, wiring: direct}

                """);
        var numbers = BoxNumbers.Of(OrderLogic.Of(check.Catalogue.Machines[SmallCatalogue.MachineId])).SafetyInputs;
        Assert.Equal([1, 2], numbers[new("standard", new("guard"), 1)]);
        Assert.Equal([3, 4], numbers[new("back-guard", new("back-switch"), 1)]);
    }

    // By hand: every core of a device that goes to a safety input or output is one that the device counts.
    [Fact]
    public void Cables_have_as_many_cores_to_safety_terminals_as_their_devices_need() => Assert.All(
        DemoCatalogue.Whole.Devices.Values.Where(device => device.Leads is not null),
        device => Assert.Equal(
            (device.Id.Value.Value, device.Safety?.Inputs ?? 0, device.Safety?.Outputs ?? 0),
            (device.Id.Value.Value, Count(device, CoreTarget.SafetyInput), Count(device, CoreTarget.SafetyOutput))));

    private static int Count(Device device, CoreTarget target) => device.Leads!.Cores.Count(core => core.LeadsTo == target);
}
