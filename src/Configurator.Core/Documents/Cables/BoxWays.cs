using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Cables;

/// <summary>Where wires go inside the box, as far as definitions tell: channels of breakers, terminals of supplies,
/// numbered inputs and outputs, drives.</summary>
internal sealed record BoxWays(ConfigurationContext Context)
{
    private ControlArchitecture Control => Context.Fitted.Machine.Control;

    private BoxNumbers Numbers =>
        Context.Documents.Numbers.GetValueOrDefault(Context.Engineered.Machine.Id.Value, BoxNumbers.None);

    /// <summary>Empty where nobody says.</summary>
    public string OnFrom(CableEntry cable, CableCore core) =>
        cable.Instance is not { } instance
            ? ""
            : string.Join(
                ':',
                new[] { On(instance, core.Target, core.Nth), core.FeederAt }.Where(part => part.Length > 0)
            );

    /// <param name="nth">Counts from 1 what the instance has with that target.</param>
    public string On(FitInstance instance, CoreTarget target, int nth) =>
        target switch
        {
            CoreTarget.Supply => ChannelOf(ChannelFor(instance)) is { Length: > 0 } channel
                ? channel
                : SupplyOf(Sensors, "+"),
            CoreTarget.ZeroVolts => SupplyOf(Sensors, "-"),
            CoreTarget.Earth => Context.Words.EarthBar,
            CoreTarget.SafetyInput => Safety(BoxPoint.SafetyInput, instance, nth, "I"),
            CoreTarget.TestPulse => Safety(BoxPoint.SafetyInput, instance, nth, "T"),
            CoreTarget.SafetyOutput => Safety(BoxPoint.SafetyOutput, instance, nth, "Q"),
            CoreTarget.FastInput => FastInput(instance),
            CoreTarget.Input => OfController(BoxPoint.Input, instance, nth, Context.Words.PlainInputNumber),
            CoreTarget.Output => OfController(BoxPoint.Output, instance, nth, Context.Words.PlainOutputNumber),
            CoreTarget.TorqueOff => Contact(instance, nth),
            CoreTarget.Network => NetworkPort(instance),
            CoreTarget.Feeder => FeederOf(instance) is { } feeder ? Context.Names.Of(feeder) : "",
            _ => "",
        };

    /// <summary>All that an instance takes, such as <c>I3 I4</c>.</summary>
    public string Inputs(FitInstance instance) => All(BoxPoint.SafetyInput, instance, "I");

    public string Outputs(FitInstance instance) => All(BoxPoint.SafetyOutput, instance, "Q");

    public string FastInput(FitInstance instance) =>
        OfController(BoxPoint.FastInput, instance, 1, Context.Words.FastInputNumber);

    /// <summary>The port of the switch that an instance takes: <c>=BOXSWITCH-KF1:4</c>.</summary>
    public string NetworkPort(FitInstance instance) =>
        Numbers.Of(BoxPoint.Network, instance.Key) is [var port] ? OnSwitch(port) : "";

    /// <summary>A port of the switch; empty where the machine names none.</summary>
    public string OnSwitch(int port) =>
        Standard(Control.Box.Network?.Switch.Value) is { } networkSwitch
            ? $"{Context.Names.Of(networkSwitch)}:{Text(port)}"
            : "";

    /// <summary>The fit that drops safe torque off; null where the machine names none.</summary>
    public FitInstance? TorqueOff => Standard(Control.Box.Safety?.TorqueOff?.Value);

    /// <summary>Fitted devices whose safety outputs a stop function drops, in the order of the safety list.</summary>
    public IEnumerable<FitInstance> Droppers() =>
        SafetyChecks.Needing(Context.Fitted).Select(pair => pair.Instance).Where(one => !one.Fit.DroppedBy.IsEmpty);

    /// <summary>The first of those that may feed it and is fitted, of the same ordinal where there are
    /// several.</summary>
    public FitInstance? FeederOf(FitInstance instance) =>
        instance
            .Fit.FedBy.SelectMany(name =>
                Context
                    .Fitted.Fitted.Where(other => other.Key.Fit.Value == name.Value)
                    .OrderBy(other => other.Key.Ordinal != instance.Key.Ordinal)
                    .ThenBy(other => other.Key.Ordinal)
            )
            .FirstOrDefault();

    /// <summary>A fit of the standard machine by its name; null where there is none.</summary>
    public FitInstance? Standard(string? name, int ordinal = 1) =>
        Context.Fitted.Fitted.FirstOrDefault(instance =>
            instance.Option is null && instance.Key.Fit.Value == name && instance.Key.Ordinal == ordinal
        );

    /// <summary><c>=BREAKERS-FC1:2</c>; empty where nobody says.</summary>
    public string ChannelOf(BreakerChannel? channel) =>
        ModuleOf(channel) is { Length: > 0 } module ? $"{module}:{Text(channel!.Value.Number)}" : "";

    /// <summary>The module that a channel belongs to; empty where nobody says.</summary>
    public string ModuleOf(BreakerChannel? channel) =>
        channel is { } at && Standard(at.Fit.Value, at.Ordinal) is { } module ? Context.Names.Of(module) : "";

    /// <summary>The circuit whose supply feeds the module of a channel; that of the sensors where no circuit has a
    /// channel there.</summary>
    public FieldCircuit? CircuitOn(BreakerChannel channel) =>
        Control.Power?.Circuits.FirstOrDefault(circuit =>
            circuit.Channel?.Value is { } own && (own.Fit, own.Ordinal) == (channel.Fit, channel.Ordinal)
        ) ?? Sensors;

    /// <summary>A terminal of the supply of a circuit.</summary>
    public string SupplyOf(FieldCircuit? circuit, string terminal) =>
        Standard(circuit?.Supply.Value) is { } supply ? $"{Context.Names.Of(supply)}:{terminal}" : "";

    private FieldCircuit? Sensors =>
        Control.Power?.Circuits.FirstOrDefault(circuit => circuit.Feeds == CircuitUse.SensorSupply);

    private string Controller =>
        Context.Fitted.Fitted.FirstOrDefault(instance =>
            instance is { Option: null, Fit.Wiring: Wiring.Inside, Device.Kind: DeviceKind.Controller }
        )
            is { } controller
            ? Context.Names.Of(controller)
            : "";

    /// <summary>What is mounted inside has a channel of its own where the machine says so.</summary>
    private BreakerChannel? ChannelFor(FitInstance instance) =>
        (instance.Fit.Wiring == Wiring.Inside ? Control.Box.InsideChannel : null)?.Value ?? Control.Box.Channel?.Value;

    /// <summary><c>=SAFETYLOGIC-KF1:I5</c>.</summary>
    private string Safety(BoxPoint point, FitInstance instance, int nth, string letter) =>
        NumberOf(point, instance, nth) is { } number ? $"{SafetyController}{letter}{Text(number)}" : "";

    /// <summary><c>=CONTROLLER-KF1 plain input 3</c>.</summary>
    private string OfController(BoxPoint point, FitInstance instance, int nth, string what) =>
        NumberOf(point, instance, nth) is { } number ? $"{Controller} {what} {Text(number)}".Trim() : "";

    /// <summary>The channel of its pair of contacts: <c>=TORQUEDROP-KF1:4.2</c>.</summary>
    private string Contact(FitInstance instance, int channel) =>
        TorqueOff is { } relay && NumberOf(BoxPoint.TorqueOff, instance, 1) is { } pair
            ? $"{Context.Names.Of(relay)}:{Text(pair)}.{Text(channel)}"
            : "";

    private int? NumberOf(BoxPoint point, FitInstance instance, int nth) =>
        Numbers.Of(point, instance.Key) is { } own && nth <= own.Length ? own[nth - 1] : null;

    private string SafetyController =>
        Standard(Control.Box.Safety?.Controller?.Value) is { } controller ? $"{Context.Names.Of(controller)}:" : "";

    private string All(BoxPoint point, FitInstance instance, string letter) =>
        string.Join(' ', Numbers.Of(point, instance.Key).Select(number => letter + Text(number)));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
