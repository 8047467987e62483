using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>What an option adds to a machine at each quantity. Fits with a condition are left to the
/// configuration.</summary>
public static class OptionLoads
{
    /// <summary>Every load, in its small unit, of the option taken so many times.</summary>
    public static ImmutableDictionary<Load, long> Of(Machine machine, Option option, int quantity)
    {
        var brought = machine
            .Instances.Where(instance =>
                instance.Option?.Id.Value == option.Id.Value
                && instance.Fit.When is null
                && quantity >= (instance.Fit.Per == FitPer.Quantity ? instance.Key.Ordinal : 1)
            )
            .ToList();
        return Load.All.ToImmutableDictionary(
            load => load,
            load => brought.Sum(instance => Of(machine, instance, load))
        );
    }

    /// <summary>What one instance adds to one load, in the load's small unit.</summary>
    public static long Of(Machine machine, FitInstance instance, Load load)
    {
        var device = instance.Device;
        return load.Id switch
        {
            "ports-a" => PortOf(machine, instance) == PortClass.A ? 1 : 0,
            "ports-b" => PortOf(machine, instance) == PortClass.B ? 1 : 0,
            "ports-hub" => PortOf(machine, instance) == PortClass.Switching ? 1 : 0,
            "box-cables" => (instance.Fit.Wiring == Wiring.Direct ? 1 : 0) + (HasNetworkCable(instance) ? 1 : 0),
            "sensor-supply" => instance.Fit.Wiring == Wiring.Port ? Small(device.Current, load) : 0,
            "extra-supply" => Small(device.ExtraCurrent, load),
            "box-heat" => instance.Fit.Wiring == Wiring.Inside ? Small(device.Heat, load) : 0,
            "rail" => instance.Fit.Wiring == Wiring.Inside ? Small(device.Rail, load) : 0,
            "air" => Small(device.Air, load),
            "mass" => Small(device.Mass, load),
            _ => throw new ArgumentException($"no such load: {load.Id}", nameof(load)),
        };
    }

    /// <summary>Only what stands outside the box has one that enters it.</summary>
    public static bool HasNetworkCable(FitInstance instance) =>
        instance.Fit.HasNetwork && instance.Fit.Wiring != Wiring.Inside;

    private static PortClass? PortOf(Machine machine, FitInstance instance) =>
        machine.Plan.HomeOf(instance.Key) is { } home ? Cabling.ClassOf(machine, home) : null;

    /// <summary>Base units of these dimensions are the loads' printed units.</summary>
    private static long Small(Quantity? quantity, Load load) =>
        quantity is null ? 0 : (long)(quantity.InBase * load.SmallPerUnit).Ceiling();
}
