using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Pages.Configurations;
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
            : core.Target switch
            {
                CoreTarget.Supply => ChannelOf(Control.Box.Channel?.Value) is { Length: > 0 } channel
                    ? channel
                    : SupplyOf(Sensors, "+"),
                CoreTarget.ZeroVolts => SupplyOf(Sensors, "-"),
                CoreTarget.Earth => Context.Words.EarthBar,
                CoreTarget.SafetyInput => Input(instance, core.Nth),
                CoreTarget.TestPulse => Numbered(Numbers.SafetyInputs, instance, core.Nth, "T"),
                CoreTarget.SafetyOutput => Output(instance, core.Nth),
                CoreTarget.FastInput => FastInput(instance),
                CoreTarget.Input => $"{Controller} {Context.Words.PlainInput}".Trim(),
                CoreTarget.Output => $"{Controller} {Context.Words.PlainOutput}".Trim(),
                CoreTarget.Feeder => FeederOf(instance) is { } feeder ? Context.Names.Of(feeder) : "",
                _ => "",
            };

    /// <summary><c>=SAFETYLOGIC-KF1:I5</c>.</summary>
    public string Input(FitInstance instance, int nth) => Numbered(Numbers.SafetyInputs, instance, nth, "I");

    public string Output(FitInstance instance, int nth) => Numbered(Numbers.SafetyOutputs, instance, nth, "Q");

    /// <summary>All that an instance takes, such as <c>I3 I4</c>.</summary>
    public string Inputs(FitInstance instance) => All(Numbers.SafetyInputs, instance, "I");

    public string Outputs(FitInstance instance) => All(Numbers.SafetyOutputs, instance, "Q");

    public string FastInput(FitInstance instance) =>
        Numbers.FastInputs.GetValueOrDefault(instance.Key, []) is [var number]
            ? $"{Controller} {Context.Words.FastInputNumber} {Text(number)}".Trim()
            : "";

    /// <summary>Fitted devices whose safety outputs a stop function drops, in the order of the safety list.</summary>
    public IEnumerable<FitInstance> Droppers() =>
        SafetyChecks.Needing(Context.Fitted).Select(pair => pair.Instance).Where(one => one.Fit.DroppedBy is not null);

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

    private string Numbered(
        ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> numbers,
        FitInstance instance,
        int nth,
        string letter
    ) =>
        numbers.TryGetValue(instance.Key, out var own) && nth <= own.Length
            ? $"{SafetyController}{letter}{Text(own[nth - 1])}"
            : "";

    private string SafetyController =>
        Standard(Control.Box.Safety?.Controller?.Value) is { } controller ? $"{Context.Names.Of(controller)}:" : "";

    private static string All(
        ImmutableSortedDictionary<InstanceKey, ImmutableArray<int>> numbers,
        FitInstance instance,
        string letter
    ) =>
        numbers.TryGetValue(instance.Key, out var own)
            ? string.Join(' ', own.Select(number => letter + Text(number)))
            : "";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
