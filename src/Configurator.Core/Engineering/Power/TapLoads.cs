using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>What one master takes from one circuit of the trunk.</summary>
/// <param name="Constant">Amperes that flow whatever the voltage.</param>
/// <param name="Watts">What is drawn as constant power.</param>
internal readonly record struct TapLoad(Rational Constant, Rational Watts)
{
    private const int Nominal = 24;

    public static TapLoad operator +(TapLoad left, TapLoad right) =>
        new(left.Constant + right.Constant, left.Watts + right.Watts);

    /// <summary>Amperes at that voltage.</summary>
    public Rational At(Rational volts) => Watts == 0 ? Constant : Constant + (Watts / volts);

    public static TapLoad Of(Device device, Microamperes current)
    {
        Rational amperes = new(current.Value, 1_000_000);
        return device.HasConstantPower ? new(0, amperes * Nominal) : new(amperes, 0);
    }
}

/// <summary>Adds up what masters and everything behind them take.</summary>
internal static class TapLoads
{
    public static TapLoad Of(FittedMachine fitted, Master master, CircuitUse use) =>
        fitted
            .PluggedInto(master.Name.Value)
            .SelectMany(pair => fitted.Behind(pair.Instance).Prepend(pair.Instance))
            .Select(instance => Of(instance, use))
            .Aggregate(Own(master, use), (sum, load) => sum + load);

    public static TapLoad Own(Master master, CircuitUse use) =>
        use == CircuitUse.SensorSupply && master.Device.Current is { } own
            ? TapLoad.Of(master.Device, Microamperes.From(own))
            : default;

    /// <summary>One device by itself; what flows at one time with others, of actuators.</summary>
    public static TapLoad Of(FitInstance instance, CircuitUse use) =>
        TapLoad.Of(instance.Device, Current(instance, use));

    /// <summary>Amperes of one device at the least voltage allowed, where constant power draws most.</summary>
    public static Rational AmperesMax(FitInstance instance, CircuitUse use) =>
        Of(instance, use).At(PowerRules.DeviceMin(use));

    /// <summary>The same of a master for itself.</summary>
    public static Rational AmperesMax(Master master, CircuitUse use) => Own(master, use).At(PowerRules.MasterMin(use));

    public static Microamperes Current(FitInstance instance, CircuitUse use) =>
        use == CircuitUse.SensorSupply ? Stated(instance.Device.Current)
        : instance is { Device.ExtraCurrent: { } extra, Fit.Simultaneity: { } share }
            ? new((long)(Microamperes.From(extra).Value * share.InBase / 100).Ceiling())
        : Stated(instance.Device.ExtraCurrent);

    private static Microamperes Stated(Quantity? current) =>
        current is { } stated ? Microamperes.From(stated) : Microamperes.Zero;
}
