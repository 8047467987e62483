using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Signals;

/// <summary>Every signal between devices and controller, in the order of the ports.</summary>
public sealed class SignalList
{
    private readonly Machine _machine;
    private readonly PortPlan _pins;
    private readonly ImmutableHashSet<InstanceKey> _boxed;

    private SignalList(Machine machine, PortPlan pins)
    {
        (_machine, _pins) = (machine, pins);
        _boxed = [.. BoxedInputs(machine)];
    }

    /// <summary>Of what is fitted.</summary>
    public static ImmutableArray<Signal> Of(FittedMachine fitted) =>
        new SignalList(fitted.Machine, fitted.Pins).Of(fitted.Fitted);

    /// <summary>Of everything that any order fits.</summary>
    public static ImmutableArray<Signal> OfAllOrders(Machine machine) =>
        new SignalList(machine, machine.Plan).Of(machine.Instances);

    /// <summary>Wired into the box, but no definition says what their cores carry.</summary>
    public static IEnumerable<FitInstance> Undescribed(FittedMachine fitted)
    {
        var described = Of(fitted).Select(signal => signal.Instance.Key).ToHashSet();
        return fitted
            .Cabled.Where(pair => pair.Home is { IsDirect: true } && !described.Contains(pair.Instance.Key))
            .Select(pair => pair.Instance);
    }

    private ImmutableArray<Signal> Of(IEnumerable<FitInstance> instances)
    {
        var masters = _machine.Control.Masters.Select(master => master.Name.Value).ToList();
        return
        [
            .. instances
                .SelectMany(instance =>
                    instance.Fit.Wiring == Wiring.Inside ? Wired(instance)
                    : _pins.HomeOf(instance.Key) is { } home ? Of(instance, home)
                    : []
                )
                .OrderBy(signal =>
                    signal.MasterPort is { Master: { } master } ? masters.IndexOf(master) : masters.Count
                )
                .ThenBy(signal => signal.MasterPort?.Port ?? 0)
                .ThenBy(signal => signal.Kind)
                .ThenBy(signal => signal.Hub is null ? 0 : signal.Home.Port)
                .ThenBy(signal => signal.Instance.Key)
                .ThenBy(signal => signal.Item?.Octet ?? int.MaxValue)
                .ThenBy(signal => signal.Item?.LastOctet ?? int.MaxValue)
                .ThenByDescending(signal => signal.Item?.Bit ?? 0)
                .ThenBy(signal => signal.Name, StringComparer.Ordinal),
        ];
    }

    private IEnumerable<Signal> Of(FitInstance instance, Home home) =>
        home.IsDirect || instance.Fit.Wiring == Wiring.Direct ? Direct(instance)
        : instance.Device.IoLink is { } data && instance.Device.Connection == ConnectionKind.IoLink
            ? AtPort(instance, home, data)
        : [Plain(instance, home)];

    /// <summary>A plain signal: a bit of its hub's process data, or pin 4 or 2 of a port.</summary>
    private Signal Plain(FitInstance instance, Home home)
    {
        var hub = _machine.Instances.FirstOrDefault(other =>
            FittedMachine.AsCarrier(other) == home.Master && other.Key.Ordinal == 1
        );
        return new(instance, SignalNames.Plain, SignalKind.Input, home)
        {
            Hub = hub,
            Data = hub?.Device.IoLink,
            Item = hub?.Device.IoLink?.ProcessData?.Inputs.FirstOrDefault(item => item.Port?.Value == home.Port),
            Pin =
                hub is not null ? null
                : home.IsPinTwo ? 2
                : 4,
            MasterPort = hub is null ? home : _pins.HomeOf(hub.Key),
        };
    }

    private static IEnumerable<Signal> AtPort(FitInstance instance, Home home, IoLinkData data)
    {
        var inputs = data.ProcessData?.Inputs ?? [];
        var outputs = data.ProcessData?.Outputs ?? [];
        return
        [
            .. inputs.Where(item => item.Port is null).Select(item => OfItem(item, SignalKind.Input)),
            .. inputs.IsEmpty ? Raw(SignalNames.RawInput, SignalKind.Input, data.InputOctets) : [],
            .. instance.Device.PinTwo == PinTwoUse.Signal ? [PinTwo()] : Array.Empty<Signal>(),
            .. outputs.Select(item => OfItem(item, SignalKind.Output)),
            .. outputs.IsEmpty ? Raw(SignalNames.RawOutput, SignalKind.Output, data.OutputOctets) : [],
        ];

        Signal OfItem(ProcessItem item, SignalKind kind) =>
            new(instance, item.Name.Value, kind, home)
            {
                Title = item.Title,
                Item = item,
                Data = data,
                MasterPort = home,
            };

        Signal PinTwo() => new(instance, SignalNames.PinTwo, SignalKind.Input, home) { Pin = 2, MasterPort = home };

        IEnumerable<Signal> Raw(string name, SignalKind kind, int octets) =>
            octets == 0
                ? []
                :
                [
                    new(instance, name, kind, home)
                    {
                        Data = data,
                        RawOctets = octets,
                        MasterPort = home,
                    },
                ];
    }

    private IEnumerable<Signal> Direct(FitInstance instance) =>
        (
            instance.Device.Connection is ConnectionKind.IoLink or ConnectionKind.Switching
            || _boxed.Contains(instance.Key)
                ? [new(instance, SignalNames.Plain, SignalKind.FastInput, Home.Direct)]
                : Array.Empty<Signal>()
        )
            .Concat(SecondSignal(instance))
            .Concat(Wired(instance));

    /// <summary>At pin 2 of a sensor whose moulded cable ends in the box.</summary>
    private static IEnumerable<Signal> SecondSignal(FitInstance instance) =>
        instance.Device is { PinTwo: PinTwoUse.Signal, Connection: not ConnectionKind.Wired }
            ? [new(instance, SignalNames.PinTwo, SignalKind.BoxInput, Home.Direct)]
            : [];

    /// <summary>What is wired to numbered inputs and outputs of the box.</summary>
    private static IEnumerable<Signal> Wired(FitInstance instance)
    {
        var needs = instance.Device.Safety ?? new(0, 0, TestPulses.None);
        return
        [
            .. Plain(SignalKind.BoxInput, instance.Device.WiresTo(CoreTarget.Input), SignalNames.State),
            .. Plain(SignalKind.BoxOutput, instance.Device.WiresTo(CoreTarget.Output), SignalNames.Command),
            .. Safe(SignalKind.SafetyInput, needs.Inputs, SignalNames.SafetyInput),
            .. Safe(SignalKind.SafetyOutput, needs.Outputs, SignalNames.SafetyOutput),
        ];

        IEnumerable<Signal> Plain(SignalKind kind, ImmutableArray<string> carries, Func<int, string> name) =>
            carries.Select((text, i) => Of(kind, i + 1, name) with { Title = Text.Of(text) });

        IEnumerable<Signal> Safe(SignalKind kind, int count, Func<int, string> name) =>
            Enumerable.Range(1, count).Select(n => Of(kind, n, name));

        Signal Of(SignalKind kind, int n, Func<int, string> name) =>
            new(instance, name(n), kind, Home.Direct) { Nth = n };
    }

    /// <summary>Of each option that says it takes a fast input and has no sensor for it, the first device wired to
    /// terminals, such as a coder: as <see cref="Box.BoxChecks"/> counts them.</summary>
    private static IEnumerable<InstanceKey> BoxedInputs(Machine machine) =>
        machine
            .Instances.Where(instance =>
                instance.Fit.Wiring == Wiring.Direct
                && instance.Option?.TouchesBox.Any(touch => touch.Value == BoxTouch.DirectInput) == true
            )
            .GroupBy(instance => instance.Option!.Id.Value)
            .Where(own => !own.Any(instance => instance.Device.Connection is not ConnectionKind.Wired))
            .Select(own => own.First().Key);
}
