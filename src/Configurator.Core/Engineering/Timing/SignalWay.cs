using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Timing;

/// <summary>How the signal of a device comes to the controller.</summary>
/// <param name="IsDirect">By a fast input of the box; a device mounted inside counts as such.</param>
/// <param name="Data">What is exchanged at its port; null for a plain signal.</param>
/// <param name="Hub">Gathers its plain signal; null where it has a port of a master to itself.</param>
public sealed record SignalWay(bool IsDirect, IoLinkData? Data, FitInstance? Hub)
{
    /// <summary>As the fit is wired and the plan gives it a home.</summary>
    public static SignalWay Of(FittedMachine fitted, FitInstance instance)
    {
        if (instance.Fit.Wiring != Wiring.Port)
        {
            return new(true, null, null);
        }

        var hub = fitted.Pins.HomeOf(instance.Key) is { } home
            ? fitted.Fitted.FirstOrDefault(other => FittedMachine.AsCarrier(other) == home.Master)
            : null;
        return new(false, instance.Device.IoLink, hub);
    }
}
