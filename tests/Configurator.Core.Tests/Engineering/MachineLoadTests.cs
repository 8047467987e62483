using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Loads as sums over conditions, held against what is mounted on single configurations.</summary>
public class MachineLoadTests
{
    private const int Configurations = 60;

    private static readonly Load[] PortLoads = [Load.ClassAPorts, Load.ClassBPorts, Load.HubPorts];

    public static TheoryData<string> Machines { get; } =
        [.. DemoCatalogue.Machines.Select(machine => machine.Id.Value.Value), SmallCatalogue.MachineId.Value];

    // Source: the devices that engineering mounts on each configuration, added up one by one.
    [Theory]
    [MemberData(nameof(Machines))]
    public void A_load_is_what_the_devices_mounted_add_up_to(string id) =>
        Compare(
            id,
            machine => Load.All.Where(load => load != Load.BoxCables && !PortLoads.Contains(load)),
            (fitted, load) => fitted.Fitted.Sum(instance => OptionLoads.Of(fitted.Machine, instance, load))
        );

    // Source: the ports of the devices that engineering mounts, each once.
    [Theory]
    [MemberData(nameof(Machines))]
    public void A_port_counts_once_whatever_shares_it(string id) =>
        Compare(
            id,
            _ => PortLoads,
            (fitted, load) =>
                fitted
                    .Fitted.Where(instance => OptionLoads.Of(fitted.Machine, instance, load) != 0)
                    .Select(instance => fitted.Machine.Plan.HomeOf(instance.Key)!.Value with { IsPinTwo = false })
                    .Distinct()
                    .Count()
        );

    // Source: the cables that engineering lists for each configuration.
    [Theory]
    [MemberData(nameof(Machines))]
    public void The_cable_is_what_the_cables_listed_add_up_to(string id) =>
        Compare(id, _ => [Load.Cable], (fitted, _) => Cabling.Of(fitted).Sum(Length));

    // Source: the finding box.entries counts the same cables.
    [Theory]
    [MemberData(nameof(Machines))]
    public void Cables_into_the_box_are_those_that_the_check_of_entries_counts(string id) =>
        Compare(
            id,
            _ => [Load.BoxCables],
            (fitted, _) =>
                Cabling.Of(fitted).Count(cable => cable is DeviceCable { Home.IsDirect: true } or TrunkCable { Previous: null } or NetworkCable)
        );

    [Theory]
    [MemberData(nameof(Machines))]
    public void Extension_masters_are_counted_where_something_is_at_home_on_them(string id) =>
        Compare(id, _ => [Load.Extensions], (fitted, _) => fitted.Masters.Count(master => master.IsExtension));

    // Source: list prices of the options taken, of their devices and of the extension masters, added up one by one.
    [Theory]
    [MemberData(nameof(Machines))]
    public void The_price_is_that_of_the_options_taken_with_their_devices(string id) =>
        Compare(id, machine => MachineLoads.Of(machine).Where(Load.IsPrice), Price);

    private static void Compare(
        string id,
        Func<Machine, IEnumerable<Load>> loads,
        Func<FittedMachine, Load, long> expected
    )
    {
        var machine = DemoCatalogue.Machines.FirstOrDefault(demo => demo.Id.Value.Value == id) ?? Check.Small.TheMachine;
        var sums = loads(machine).ToDictionary(load => load, load => MachineLoads.Of(machine, load));
        var sample = Weigher.Of(OrderLogic.Of(machine)).Sample(PartialOrder.Empty, Configurations, seed: 5)!.Value;
        foreach (var fitted in sample.Select(taken => FittedMachine.Of(machine, taken, machine.Plan)))
        {
            Assert.All(
                sums,
                sum => Assert.Equal(expected(fitted, sum.Key), sum.Value.Of(fitted.Configuration.QuantityOf))
            );
        }
    }

    private static long Length(CableRun cable) =>
        cable.Stock is { } stock ? Core.Model.Units.Micrometres.From(stock).Value : cable.Needed?.Value ?? 0;

    private static long Price(FittedMachine fitted, Load load) =>
        fitted
            .Configuration.Quantities.Select(taken => (fitted.Machine.Options[taken.Key].Price, Count: taken.Value))
            .Concat(
                fitted.Fitted.Where(instance => instance.Option is not null).Select(instance => (instance.Device.Price, Count: 1))
            )
            .Concat(
                fitted.Masters.Where(master => master.IsExtension).Select(master => (master.Device.Price, Count: 1))
            )
            .Where(item => item.Price?.Unit.Symbol == load.Unit)
            .Sum(item => (long)(item.Price!.InBase * 100).Ceiling() * item.Count);
}
