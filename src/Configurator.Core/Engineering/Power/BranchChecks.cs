using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Cores of device cables against what lets current into them: the limit of the port where its maker states
/// one, else the protective device of the circuit in the box; whichever is less.</summary>
internal static class BranchChecks
{
    /// <summary>Of all cables behind a circuit the one that comes closest; null where nothing takes anything from
    /// it.</summary>
    public static Finding? Of(FedCircuit fed, IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf)
    {
        var worst = fed
            .Masters.SelectMany(master =>
                fed.Fitted.PluggedInto(master.Name.Value)
                    .SelectMany(pair => Branches(fed, master.Ports, pair.Instance))
            )
            .Select(pair => new Branch(pair.Instance, DeviceVolts.AreaOf(cableOf, pair.Instance), pair.Let))
            .MinBy(branch => branch.Carries - branch.Let);
        return worst is null
            ? null
            : Finding.AtMost(
                PowerRules.Branch,
                fed.Name,
                $"the cable of `{worst.Instance.Key}` has cores of {worst.Area.ToString(2)} mm2, `{fed.Name}` can send {worst.Let.ToString(2)} A into it",
                new(worst.Let, "A"),
                new(worst.Carries, "A"),
                worst.Instance.Fit.Name.Span
            ) with
            {
                Fix = FixFor(worst),
            };
    }

    /// <summary>The device and, where it is a hub, whatever is plugged into it; only what takes from the
    /// circuit.</summary>
    private static IEnumerable<(FitInstance Instance, Rational Let)> Branches(
        FedCircuit fed,
        PortSet ports,
        FitInstance instance
    )
    {
        var stated = fed.Use == CircuitUse.SensorSupply ? ports.CurrentPerPort : ports.ExtraPerPort;
        var let = Least(stated, fed.Circuit.Protection);
        var behind = fed.Fitted.Behind(instance).ToList();
        if (behind.Prepend(instance).Any(one => TapLoads.Current(one, fed.Use) > Microamperes.Zero))
        {
            yield return (instance, let);
        }

        var own = fed.Use == CircuitUse.SensorSupply ? instance.Device.Ports?.CurrentPerPort : null;
        foreach (var guest in behind.Where(guest => TapLoads.Current(guest, fed.Use) > Microamperes.Zero))
        {
            yield return (guest, own is null || Amperes(own) > let ? let : Amperes(own));
        }
    }

    private static string FixFor(Branch branch) =>
        ConductorSizes.ClassFive.FirstOrDefault(size => Ampacity.OfCordset(size.AreaMm2) >= branch.Let) is { } enough
            ? $"take a cordset with cores of {enough.AreaMm2.ToString(2)} mm2, which carry {Ampacity.OfCordset(enough.AreaMm2).ToString(1)} A, or a master that limits each port to less"
            : "take a master that limits the current of each port";

    private static Rational Least(Quantity? port, Quantity protection) =>
        port is not null && port.InBase < protection.InBase ? Amperes(port) : Amperes(protection);

    private static Rational Amperes(Quantity current) => current.InBase / 1000;

    /// <param name="Area">Of its smallest core, in mm2.</param>
    /// <param name="Let">Amperes that the port or the protective device lets into it.</param>
    private sealed record Branch(FitInstance Instance, Rational Area, Rational Let)
    {
        public Rational Carries => Ampacity.OfCordset(Area);
    }
}
