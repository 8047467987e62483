using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Volts that the cables from a master to its devices take away.</summary>
internal static class DeviceVolts
{
    /// <summary>The device of a master that loses most on its own cable; null where none takes anything from the
    /// circuit.</summary>
    public static FarDevice? Furthest(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf,
        Master master
    ) =>
        fed.Fitted.PluggedInto(master.Name.Value)
            .SelectMany(pair => Drops(fed, cableOf, pair.Instance))
            .Where(far => far.Drop > 0)
            .MaxBy(far => far.Drop);

    /// <summary>Cross-section of the cores to a device, in mm2.</summary>
    public static Rational AreaOf(IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf, FitInstance instance) =>
        AreaOf(cableOf.GetValueOrDefault(instance.Key)?.Cordset);

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
        return Loop(power, AreaOf(cordset), MetresOf(Cabling.StockFor(cordset, needed), needed))
            * TapLoads.AmperesMax(instance, use);
    }

    /// <summary>Of the device itself; for a hub also of all behind it, whose current flows through both
    /// cables.</summary>
    private static IEnumerable<FarDevice> Drops(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf,
        FitInstance instance
    )
    {
        ImmutableArray<FitInstance> behind = [.. fed.Fitted.Behind(instance)];
        var flowing = behind
            .Prepend(instance)
            .Aggregate((Rational)0, (sum, one) => sum + TapLoads.AmperesMax(one, fed.Use));
        var own = Far(instance, 0, flowing);
        yield return own;
        foreach (var guest in behind)
        {
            yield return Far(guest, own.Drop, TapLoads.AmperesMax(guest, fed.Use));
        }

        FarDevice Far(FitInstance one, Rational before, Rational amperes)
        {
            var cable = cableOf.GetValueOrDefault(one.Key);
            return new(
                fed.Power,
                one,
                before,
                amperes,
                MetresOf(cable?.Stock, cable?.Needed),
                AreaOf(cable?.Cordset)
            );
        }
    }

    /// <summary>Ohm out and back of a cable.</summary>
    public static Rational Loop(FieldPower power, Rational areaMm2, Rational metres) =>
        Conductors.LoopOhm(metres, TrunkFeed.Hot(power, areaMm2));

    private static Rational MetresOf(Quantity? stock, Micrometres? needed) =>
        stock is null ? new Rational((needed ?? default).Value, 1_000_000) : stock.InBase / 1000;

    /// <summary>A cable that is cut on site is reckoned with cores of 0.34 mm2.</summary>
    private static Rational AreaOf(Device? cordset) => cordset?.Cordset?.Conductor.InBase ?? Thinnest;

    private static readonly Rational Thinnest = Rational.Of(0.34m);
}

/// <summary>A device at the end of its cable.</summary>
/// <param name="Before">Volts lost on the cable of the hub that it is plugged into.</param>
/// <param name="Amperes">What flows through its cable.</param>
/// <param name="Metres">Length of its cable.</param>
/// <param name="AreaMm2">Of the cores of its cable.</param>
internal sealed record FarDevice(
    FieldPower Power,
    FitInstance Instance,
    Rational Before,
    Rational Amperes,
    Rational Metres,
    Rational AreaMm2
)
{
    /// <summary>Volts lost between the master and the device.</summary>
    public Rational Drop => DropWith(AreaMm2);

    /// <summary>The same with other cores.</summary>
    public Rational DropWith(Rational areaMm2) => Before + (DeviceVolts.Loop(Power, areaMm2, Metres) * Amperes);
}
