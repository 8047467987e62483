using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Ports;

/// <summary>One cable of a machine, with its way and the length to take from stock.</summary>
/// <param name="From">The station where it starts: the box, a master or a hub.</param>
/// <param name="To">The station where it ends.</param>
/// <param name="Needed">Way along the route, both drops and the slack; null where no path leads there.</param>
/// <param name="Cordset">The stock cable; null where the cable is cut and wired on site.</param>
/// <param name="Stock">Shortest stock length that reaches; null where none does, or the cable is cut.</param>
public abstract record CableRun(Station From, Station To, Micrometres? Needed, Device? Cordset, Quantity? Stock);

/// <summary>From a home to a device.</summary>
public sealed record DeviceCable(
    FitInstance Instance,
    Home Home,
    Station From,
    Micrometres? Needed,
    Device? Cordset,
    Quantity? Stock
) : CableRun(From, Instance.Station, Needed, Cordset, Stock);

/// <summary>From the box or a master to the next master: power or network.</summary>
/// <param name="Previous">Null where it comes from the box.</param>
public sealed record TrunkCable(
    Master? Previous,
    Master Next,
    bool IsPower,
    Station From,
    Micrometres? Needed,
    Device? Cordset,
    Quantity? Stock
) : CableRun(From, Next.Station, Needed, Cordset, Stock);

/// <summary>A network cable of its own from the box to a device.</summary>
public sealed record NetworkCable(
    FitInstance Instance,
    Station From,
    Micrometres? Needed,
    Device? Cordset,
    Quantity? Stock
) : CableRun(From, Instance.Station, Needed, Cordset, Stock);

/// <summary>Works out every cable of a fitted machine.</summary>
internal static class Cabling
{
    public static ImmutableArray<CableRun> Of(FittedMachine fitted) =>
        [.. Trunk(fitted), .. Devices(fitted), .. Networks(fitted)];

    private static IEnumerable<NetworkCable> Networks(FittedMachine fitted)
    {
        var (box, network) = (fitted.Machine.Control.Box.Station, fitted.Machine.Control.Trunk.Network);
        foreach (var (instance, _) in fitted.Cabled.Where(pair => pair.Instance.Fit.HasNetwork))
        {
            var needed = Needed(fitted.Machine, box, instance.Station);
            yield return new(instance, box, needed, network, StockFor(network, needed));
        }
    }

    private static IEnumerable<CableRun> Devices(FittedMachine fitted)
    {
        foreach (var (instance, home) in fitted.Cabled)
        {
            if (home is { } at && From(fitted, at) is { } from)
            {
                var cordset = CordsetFor(fitted.Machine, instance.Device, ClassOf(fitted.Machine, at));
                var needed = Needed(fitted.Machine, from, instance.Station);
                yield return new DeviceCable(instance, at, from, needed, cordset, StockFor(cordset, needed));
            }
        }
    }

    private static IEnumerable<CableRun> Trunk(FittedMachine fitted)
    {
        Master? previous = null;
        foreach (var master in fitted.Masters)
        {
            var from = previous?.Station ?? fitted.Machine.Control.Box.Station;
            var needed = Needed(fitted.Machine, from, master.Station);
            var (power, network) = fitted.Machine.Control.Trunk;
            yield return new TrunkCable(previous, master, IsPower: true, from, needed, power, StockFor(power, needed));
            yield return new TrunkCable(
                previous,
                master,
                IsPower: false,
                from,
                needed,
                network,
                StockFor(network, needed)
            );
            previous = master;
        }
    }

    private static Station? From(FittedMachine fitted, Home home) =>
        home.Master is { } carrier ? fitted.StationOf(carrier) : fitted.Machine.Control.Box.Station;

    /// <summary>Way along the route, the drops at both ends, and the slack; null where no path leads there.</summary>
    public static Micrometres? Needed(Machine machine, Station from, Station to) =>
        machine.Route.DistancesFrom(from.Node).TryGetValue(to.Node, out var way)
            ? way + from.Drop + to.Drop + machine.Control.Slack
            : null;

    /// <summary>The machine's cordset for that kind of port, if its plug fits the device; a cable to terminals is cut
    /// on site. A class A device at a class B port has no use for pin 5 and keeps its class A cable; pin 2 stays
    /// unconnected in the device.</summary>
    /// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.5 with public pin tables
    /// (corroborated).</remarks>
    /// <param name="port">Null for a cable into the box.</param>
    public static Device? CordsetFor(Machine machine, Device device, PortClass? port)
    {
        var (ioLink, classB, direct) = machine.Control.Cordsets;
        var choice = port switch
        {
            null => direct,
            PortClass.B when device.PortClass == PortClass.B => classB,
            _ => ioLink,
        };
        return device.Plug.StartsWith("m12-a-", StringComparison.Ordinal) ? choice : null;
    }

    public static PortClass? ClassOf(Machine machine, Home home) =>
        home.Master is { } carrier && machine.Carriers.TryGetValue(carrier, out var ports)
            ? ports.ClassOf(home.Port)
            : null;

    public static Quantity? StockFor(Device? cordset, Micrometres? needed) =>
        needed is { } length
            ? cordset?.Cordset?.Lengths.FirstOrDefault(stock => Micrometres.From(stock) >= length)
            : null;
}
