using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>The one architecture of a machine: its box, its field masters in trunk order, its stock cables.</summary>
public sealed record ControlArchitecture(
    ControlBox Box,
    ImmutableArray<Master> Masters,
    CordsetChoice Cordsets,
    TrunkCables Trunk
)
{
    /// <summary>Stands where none could be read; such a machine is not whole.</summary>
    public static ControlArchitecture Unknown { get; } =
        new(
            new(
                new(
                    new(new("unknown"), default),
                    Text.Empty,
                    new(new(new("unknown"), default), Text.Empty, AreaClass.NonFood, WashMethod.Dry),
                    new("unknown"),
                    default
                ),
                0,
                0
            ),
            [],
            new(Nothing, Nothing, Nothing),
            new(Nothing, Nothing)
        );

    private static Device Nothing => new(new(new("unknown"), default), Text.Empty, DeviceKind.Cordset, "");

    /// <summary>Kept free on every master for what comes later.</summary>
    public int SparePorts { get; init; }

    /// <summary>Null where the machine does not say how its trunk is fed: then nothing of it is checked.</summary>
    public FieldPower? Power { get; init; }

    /// <summary>Brings two plain signals of one option to pins 4 and 2 of a port; null where the machine uses
    /// none.</summary>
    public Device? Splitter { get; init; }

    /// <summary>Added to every cable before the next stock length.</summary>
    public Micrometres Slack { get; init; }

    public ControlTiming Timing { get; init; } = new();

    /// <summary>What stops the machine or a part of it, as fits and circuits name it.</summary>
    public ImmutableArray<StopFunction> Stops { get; init; } = [];

    public Master? Find(MasterName name) => Masters.FirstOrDefault(master => master.Name.Value == name);
}

/// <param name="Name">Such as <c>guards</c>.</param>
public sealed record StopFunction(Located<string> Name, Text Title);

/// <param name="Entries">Cable entries through its wall.</param>
/// <param name="DirectInputs">Fast 24 V inputs of the controller.</param>
public sealed record ControlBox(Station Station, int Entries, int DirectInputs)
{
    /// <summary>Null where the machine does not say: then safety inputs and outputs are not counted.</summary>
    public SafetyOffer? Safety { get; init; }

    /// <summary>The channel that feeds 24 V to what is wired directly into it; null where the machine does not
    /// say.</summary>
    public Located<BreakerChannel>? Channel { get; init; }

    /// <summary>Rated current of that channel; null where the machine does not say.</summary>
    public Quantity? Protection { get; init; }

    /// <summary>The channel that feeds 24 V to what is mounted inside; that of <see cref="Channel"/> where the machine
    /// does not say.</summary>
    public Located<BreakerChannel>? InsideChannel { get; init; }

    /// <summary>Rated current of that channel; null where the machine does not say.</summary>
    public Quantity? InsideProtection { get; init; }

    /// <summary>Plain 24 V inputs of the controller; null where the machine does not say.</summary>
    public int? Inputs { get; init; }

    /// <summary>Plain 24 V outputs of the controller; null where the machine does not say.</summary>
    public int? Outputs { get; init; }

    /// <summary>Null where the machine does not say.</summary>
    public NetworkOffer? Network { get; init; }

    /// <summary>The circuit diagram of the box, which has what these documents leave out; empty where the machine names
    /// none.</summary>
    public string Diagram { get; init; } = "";

    /// <summary>So many there are of a point; null where the machine does not say.</summary>
    public int? OfferOf(BoxPoint point) =>
        point switch
        {
            BoxPoint.SafetyInput => Safety?.Inputs,
            BoxPoint.SafetyOutput => Safety?.Outputs,
            BoxPoint.FastInput => DirectInputs,
            BoxPoint.Input => Inputs,
            BoxPoint.Output => Outputs,
            BoxPoint.TorqueOff => Safety?.TorqueOffPairs,
            _ => Network?.Ports,
        };

    /// <summary>Of its screw terminals; null where they are spring terminals.</summary>
    public Quantity? TerminalTorque { get; init; }
}

/// <summary>The network switch in the box: port 1 leads to the trunk.</summary>
/// <param name="Switch">The standard fit that it is.</param>
public sealed record NetworkOffer(Located<string> Switch, int Ports)
{
    public const int TrunkPort = 1;
}

/// <summary>An IO-Link master on the trunk. An extension is fitted only when an order has a fit at home
/// there.</summary>
public sealed record Master(Located<MasterName> Name, Device Device, Station Station, bool IsExtension)
{
    public PortSet Ports => Device.Ports!;
}

/// <summary>The stock cables that connect devices: on class A ports and hubs, on class B ports, and into the
/// box.</summary>
public sealed record CordsetChoice(Device IoLink, Device ClassB, Device Direct);

/// <summary>The two cables that run from master to master.</summary>
public sealed record TrunkCables(Device Power, Device Network);

/// <summary>What the way of a signal costs in time; null where nobody says.</summary>
public sealed record ControlTiming
{
    /// <summary>From a master's port to its network side, at most.</summary>
    public Quantity? Master { get; init; }

    public Quantity? Network { get; init; }

    /// <summary>Cycle of the task that answers.</summary>
    public Quantity? Task { get; init; }

    /// <summary>From the end of the task to the output, at most.</summary>
    public Quantity? Output { get; init; }

    public Quantity? FastInput { get; init; }

    /// <summary>Resolution with which fast inputs keep the time of an event; null where they do not.</summary>
    public Quantity? Latch { get; init; }
}
