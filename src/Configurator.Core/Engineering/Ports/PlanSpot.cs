using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Why a device cannot live at a kind of port.</summary>
public enum SpotFault
{
    None,
    PortClass,
    Reach,
    Current,
}

/// <summary>What a device would find at the ports of one class of a master or hub.</summary>
/// <param name="Reason">Why it cannot live there; null where it can.</param>
/// <param name="Cable">To take from stock, or to cut where no stock cable is used; zero where it cannot live
/// there.</param>
/// <param name="Shortfall">By how much the longest cable allowed is too short; zero where it reaches.</param>
public sealed record PlanSpot(SpotFault Fault, string? Reason, Micrometres Cable, Micrometres Shortfall)
{
    public bool IsPossible => Fault == SpotFault.None;

    /// <summary>Judges port class, pin 2, cable length and the limits of a single port.</summary>
    public static PlanSpot Of(Machine machine, FitInstance instance, MasterName carrier, PortClass offered)
    {
        var ports = machine.Carriers[carrier];
        if (PortCompatibility.Objection(instance.Device, offered, ports.PinTwo) is { } objection)
        {
            return Not(SpotFault.PortClass, objection);
        }

        if (CurrentChecks.Objection(instance, ports, offered) is { } overload)
        {
            return Not(SpotFault.Current, overload);
        }

        return Reach(machine, instance, carrier, offered);
    }

    /// <summary>What one port of these gives at L+.</summary>
    public static Microamperes CurrentOf(PortSet ports) => CurrentChecks.PortLimit(ports);

    /// <summary>Where the ports of a master or hub are.</summary>
    public static Station? StationOf(Machine machine, MasterName carrier) =>
        machine.Control.Find(carrier)?.Station
        ?? machine
            .Instances.FirstOrDefault(instance =>
                instance.Key.Ordinal == 1 && FittedMachine.AsCarrier(instance) == carrier
            )
            ?.Station;

    private static PlanSpot Reach(Machine machine, FitInstance instance, MasterName carrier, PortClass offered)
    {
        if (
            StationOf(machine, carrier) is not { } from
            || Cabling.Needed(machine, from, instance.Station) is not { } needed
        )
        {
            return Not(SpotFault.Reach, "no cable path leads there");
        }

        var cordset = Cabling.CordsetFor(machine, instance.Device, offered);
        var limit = ReachChecks.LimitAtPort(cordset);
        return needed > limit
            ? new(SpotFault.Reach, $"the cable would be {needed - limit} too long", default, needed - limit)
            : new(SpotFault.None, null, StockOf(cordset, needed), default);
    }

    private static Micrometres StockOf(Device? cordset, Micrometres needed) =>
        Cabling.StockFor(cordset, needed) is { } stock ? Micrometres.From(stock) : needed;

    private static PlanSpot Not(SpotFault fault, string reason) => new(fault, reason, default, default);
}
