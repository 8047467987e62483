using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Box;

/// <summary>Which fits take inputs, outputs and ports of the box, and how many of each.</summary>
public static class BoxTakers
{
    /// <summary>Of everything that any order fits: the standard machine first, then options, by key.</summary>
    /// <param name="plan">Tells which fits are wired into the box.</param>
    public static ILookup<BoxPoint, (FitInstance Instance, int Count)> Of(Machine machine, PortPlan plan)
    {
        var signals = SignalList
            .OfAllOrders(machine with { Plan = plan })
            .ToLookup(signal => (signal.Instance.Key, signal.Point));
        return (
            from instance in machine.Instances.Where(instance => instance.Fit.Wiring != Wiring.Port)
            from point in Enum.GetValues<BoxPoint>()
            let count = signals[(instance.Key, point)].Count() + Others(instance, point)
            where count > 0
            orderby instance.Option is not null, instance.Key
            select (point, taker: (instance, count))
        ).ToLookup(pair => pair.point, pair => pair.taker);
    }

    /// <summary>What is no signal: contacts that drop torque, network ports.</summary>
    private static int Others(FitInstance instance, BoxPoint point) =>
        point switch
        {
            BoxPoint.TorqueOff => HasTerminal(instance, CoreTarget.TorqueOff) ? 1 : 0,
            BoxPoint.Network => instance.Fit.HasNetwork || HasTerminal(instance, CoreTarget.Network) ? 1 : 0,
            _ => 0,
        };

    private static bool HasTerminal(FitInstance instance, CoreTarget target) =>
        instance.Fit.Wiring == Wiring.Inside && !instance.Device.WiresTo(target).IsEmpty;
}
