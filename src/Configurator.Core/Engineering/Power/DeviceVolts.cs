using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Volts that the cables from a master to its devices take away.</summary>
internal static class DeviceVolts
{
    /// <summary>The device of a master that loses most on its own cable, and how much; null where none takes anything
    /// from the circuit.</summary>
    public static (FitInstance Instance, Rational Drop)? Furthest(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf,
        Master master
    )
    {
        var drops = fed
            .Fitted.PluggedInto(master.Name.Value)
            .SelectMany(pair => Drops(fed, cableOf, pair.Instance))
            .Where(pair => pair.Drop > 0)
            .ToList();
        return drops.Count == 0 ? null : drops.MaxBy(pair => pair.Drop);
    }

    /// <summary>What a device loses on its cable from the master, by itself.</summary>
    public static Rational OwnDrop(
        Machine machine,
        FieldPower power,
        Master master,
        FitInstance instance,
        CircuitUse use
    )
    {
        var home = machine.Plan.HomeOf(instance.Key)!.Value;
        var cordset = Cabling.CordsetFor(machine, instance.Device, Cabling.ClassOf(machine, home));
        var needed = Cabling.Needed(machine, master.Station, instance.Station);
        return Loop(power, cordset, Cabling.StockFor(cordset, needed), needed) * TapLoads.AmperesMax(instance, use);
    }

    /// <summary>Of the device itself; for a hub also of all behind it, whose current flows through both
    /// cables.</summary>
    private static IEnumerable<(FitInstance Instance, Rational Drop)> Drops(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf,
        FitInstance instance
    )
    {
        ImmutableArray<FitInstance> behind = [.. fed.Fitted.Behind(instance)];
        var flowing = behind
            .Prepend(instance)
            .Aggregate((Rational)0, (sum, one) => sum + TapLoads.AmperesMax(one, fed.Use));
        var own = Loop(instance) * flowing;
        yield return (instance, own);
        foreach (var guest in behind)
        {
            yield return (guest, own + (Loop(guest) * TapLoads.AmperesMax(guest, fed.Use)));
        }

        Rational Loop(FitInstance one)
        {
            var cable = cableOf.GetValueOrDefault(one.Key);
            return DeviceVolts.Loop(fed.Power, cable?.Cordset, cable?.Stock, cable?.Needed);
        }
    }

    /// <summary>Ohm out and back of a cable; a cut one is reckoned with cores of 0.34 mm2.</summary>
    private static Rational Loop(FieldPower power, Device? cordset, Quantity? stock, Micrometres? needed) =>
        Conductors.LoopOhm(
            stock is null ? new Rational((needed ?? default).Value, 1_000_000) : stock.InBase / 1000,
            TrunkFeed.Hot(power, cordset?.Cordset?.Conductor.InBase ?? Thinnest)
        );

    private static readonly Rational Thinnest = Rational.Of(0.34m);
}
