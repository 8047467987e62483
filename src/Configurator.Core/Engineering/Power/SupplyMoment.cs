using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>A moment at which supplies are looked at, and what everything draws then.</summary>
/// <param name="Of">A device, from the supply of that use.</param>
/// <param name="OfMaster">A master, for itself; null where it states nothing.</param>
internal sealed record SupplyMoment(Func<FitInstance, CircuitUse, Microamperes> Of, Func<Master, Quantity?> OfMaster)
{
    public static readonly SupplyMoment Running = new(TapLoads.Current, master => master.Device.Current);

    public static readonly SupplyMoment Starting = new(
        (instance, use) =>
            use == CircuitUse.SensorSupply && instance.Device.StartUpCurrent is { } peak
                ? Microamperes.From(peak)
                : TapLoads.Current(instance, use),
        master => master.Device.StartUpCurrent ?? master.Device.Current
    );

    /// <summary>What each of these draws from a supply with these uses. The one that feeds sensors also feeds masters,
    /// the 24 V devices in the box and those wired to it.</summary>
    public IEnumerable<(FitInstance Instance, Microamperes Current)> Drawn(
        IEnumerable<FitInstance> fits,
        ImmutableArray<CircuitUse> uses
    ) =>
        from use in uses
        from instance in fits
        where use == CircuitUse.SensorSupply || instance.Fit.Wiring == Wiring.Port
        select (instance, Of(instance, use));

    /// <summary>The same of masters.</summary>
    public IEnumerable<(Master Master, Microamperes Current)> Drawn(
        IEnumerable<Master> masters,
        ImmutableArray<CircuitUse> uses
    ) =>
        from master in masters
        where uses.Contains(CircuitUse.SensorSupply) && OfMaster(master) is not null
        select (master, Microamperes.From(OfMaster(master)!));
}
