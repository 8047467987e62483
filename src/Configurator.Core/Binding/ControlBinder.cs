using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the control architecture: box, masters, stock cables.</summary>
internal sealed class ControlBinder(Names<Station> stations, Names<Device> devices, ICollection<Diagnostic> report)
{
    /// <summary>The whole of it, or null where any part has a fault: there is no half an architecture to check
    /// against.</summary>
    public ControlArchitecture? Bind(Fields f)
    {
        if (
            f.Value<Fields>("box") is not { } box
            || f.Value<Fields>("cordsets") is not { } cordsets
            || f.Value<Fields>("trunk") is not { } trunk
            || Box(box) is not { } controlBox
            || Cordsets(cordsets) is not { } choice
            || Trunk(trunk) is not { } cables
            || !HasSoundSplitter(f, out var splitter)
        )
        {
            return null;
        }

        var masters = Unique.By(
            "master",
            f.Records("masters").Select(Master).OfType<Master>(),
            master => master.Name.Select(name => name.Value),
            report
        );
        return masters.Length < f.Records("masters").Length
            ? null
            : new(controlBox, masters, choice, cables)
            {
                SparePorts = f.Value("spare-ports", 0),
                Splitter = splitter,
                Slack = f.Value<Quantity>("slack") is { } slack ? Micrometres.From(slack) : default,
                Power = f.Value<Fields>("power") is { } power ? FieldPowerBinder.Bind(power, report) : null,
                Timing = f.Value<Fields>("timing") is { } timing ? Timing(timing) : new(),
                Stops = Stops(f),
            };
    }

    private ImmutableArray<StopFunction> Stops(Fields f) =>
        Unique.By(
            "stop function",
            f.Records("stops")
                .Select(stop =>
                    stop.One<string>("stop") is { } name
                        ? new StopFunction(name, stop.Value<Text>("title") ?? Text.Empty)
                        : null
                )
                .OfType<StopFunction>(),
            stop => stop.Name,
            report
        );

    private static ControlTiming Timing(Fields f) =>
        new()
        {
            Master = f.Value<Quantity>("master"),
            Network = f.Value<Quantity>("network"),
            Task = f.Value<Quantity>("task"),
            Output = f.Value<Quantity>("output"),
            FastInput = f.Value<Quantity>("fast-input"),
            Latch = f.Value<Quantity>("latch"),
        };

    private ControlBox? Box(Fields f) =>
        f.One<string>("station") is { } at
        && stations.Find(at, report) is { } station
        && f.One<int>("entries") is { } entries
        && f.One<int>("direct-inputs") is { } inputs
            ? new(station, entries.Value, inputs.Value)
            {
                Safety = Safety(f),
                Channel = f.One<string>("channel")?.Select(BreakerChannel.Parse),
                Protection = f.Value<Quantity>("protection"),
                InsideChannel = f.One<string>("inside-channel")?.Select(BreakerChannel.Parse),
                InsideProtection = f.Value<Quantity>("inside-protection"),
                Inputs = f.One<int>("inputs")?.Value,
                Outputs = f.One<int>("outputs")?.Value,
                Network = Network(f),
                Diagram = f.Value<string>("diagram") ?? "",
                TerminalTorque = f.Value<Quantity>("terminal-torque"),
            }
            : null;

    private static NetworkOffer? Network(Fields f) =>
        f.Value<Fields>("network") is { } offer
        && offer.One<string>("switch") is { } name
        && offer.One<int>("ports") is { } ports
            ? new(name, ports.Value)
            : null;

    private static SafetyOffer? Safety(Fields f) =>
        f.Value<Fields>("safety") is { } offer
        && offer.One<int>("inputs") is { } inputs
        && offer.One<int>("outputs") is { } outputs
            ? new(inputs.Value, outputs.Value, offer.Value("test-pulses", otherwise: false))
            {
                Controller = offer.One<string>("controller"),
                TorqueOff = offer.One<string>("torque-off"),
                TorqueOffPairs = offer.One<int>("torque-off-pairs")?.Value,
            }
            : null;

    private CordsetChoice? Cordsets(Fields f)
    {
        var ioLink = Cordset(f, "io-link");
        var classB = Cordset(f, "class-b");
        var direct = Cordset(f, "direct");
        return ioLink is null || classB is null || direct is null ? null : new(ioLink, classB, direct);
    }

    /// <summary>A machine may do without.</summary>
    private bool HasSoundSplitter(Fields f, out Device? splitter)
    {
        splitter = Suited(f.One<string>("splitter"), "a splitter", "it is not of kind `splitter`", device =>
            device.Kind == DeviceKind.Splitter
        );
        return splitter is not null || !f.Has("splitter");
    }

    private TrunkCables? Trunk(Fields f)
    {
        var power = Cordset(f, "power");
        var network = Cordset(f, "network");
        return power is null || network is null ? null : new(power, network);
    }

    private Device? Cordset(Fields f, string key) =>
        Suited(f.One<string>(key), "a stock cable", "it has no `cordset`", device => device.Cordset is not null);

    private Master? Master(Fields f)
    {
        if (
            f.One<string>("master") is not { } name
            || f.One<string>("station") is not { } at
            || stations.Find(at, report) is not { } station
            || Suited(f.One<string>("device"), "a master", "it is not of kind `io-link-master` with `ports`", device =>
                device is { Kind: DeviceKind.IoLinkMaster, Ports: not null }
            )
                is not { } device
        )
        {
            return null;
        }

        TagChecks.OfMaster(name, report);
        return new(name.Select(text => new MasterName(text)), device, station, f.Value("extension", otherwise: false));
    }

    private Device? Suited(Located<string>? name, string asWhat, string because, Func<Device, bool> isSuited)
    {
        if (name is not { } given || devices.Find(given, report) is not { } device)
        {
            return null;
        }

        if (isSuited(device))
        {
            return device;
        }

        if (!device.IsWhole)
        {
            return null;
        }

        report.Add(BindingDiagnostics.DeviceUnsuited(given, asWhat, because));
        return null;
    }
}
