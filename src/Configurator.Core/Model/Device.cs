using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>A part of the library. Quantities are as its maker states them; null where it states none.</summary>
/// <param name="Letters">Class letters after IEC 81346-2, such as BX.</param>
public sealed record Device(Located<DeviceId> Id, Text Title, DeviceKind Kind, string Letters)
{
    public ConnectionKind Connection { get; init; }

    public PortClass PortClass { get; init; }

    public PinTwoUse PinTwo { get; init; }

    public string Plug { get; init; } = "none";

    public string? FarPlug { get; init; }

    /// <summary>From L+ at pin 1, or from the control box where wired.</summary>
    public Quantity? Current { get; init; }

    /// <summary>From the extra supply of a class B port, all outputs on.</summary>
    public Quantity? ExtraCurrent { get; init; }

    public Quantity? StartUpCurrent { get; init; }

    /// <summary>What a safety device needs of the box.</summary>
    public SafetyNeeds? Safety { get; init; }

    /// <summary>Draws more as the voltage falls, such as a device with a converter of its own; its currents hold at
    /// 24 V.</summary>
    public bool HasConstantPower { get; init; }

    /// <summary>What a supply gives for ever.</summary>
    public Quantity? OutputCurrent { get; init; }

    /// <summary>What a supply gives while everything starts.</summary>
    public Quantity? BoostCurrent { get; init; }

    /// <summary>The device's own delay from event to signal, at most.</summary>
    public Quantity? Response { get; init; }

    /// <summary>How much that delay varies; null where nobody says, so that all of it may.</summary>
    public Quantity? ResponseJitter { get; init; }

    public IoLinkData? IoLink { get; init; }

    public ImmutableArray<Parameter> Parameters { get; init; } = [];

    public PortSet? Ports { get; init; }

    public Cordset? Cordset { get; init; }

    /// <summary>How a device without a plug is wired into the box.</summary>
    public Leads? Leads { get; init; }

    /// <summary>Of a device inside the box: what its terminals are wired to; empty where nobody says.</summary>
    public ImmutableArray<Terminal> Terminals { get; init; } = [];

    /// <summary>Of contacts that drop a circuit: where it comes in and goes out; null where nobody says.</summary>
    public (string In, string Out)? Contacts { get; init; }

    /// <summary>What its cores or terminals with that target carry, in their order.</summary>
    public ImmutableArray<string> WiresTo(CoreTarget target) =>
        [
            .. (Leads?.Cores ?? []).Where(core => core.LeadsTo == target).Select(core => core.Carries),
            .. Terminals.Where(terminal => terminal.LeadsTo == target).Select(terminal => terminal.Carries),
        ];

    /// <summary>Loss given off inside the control box.</summary>
    public Quantity? Heat { get; init; }

    public Quantity? Rail { get; init; }

    /// <summary>Free air at the machine's rated speed.</summary>
    public Quantity? Air { get; init; }

    public Quantity? Mass { get; init; }

    public Quantity? Price { get; init; }

    public Quantity? LeadTime { get; init; }

    public Lifecycle Lifecycle { get; init; }

    public ImmutableArray<string> Ingress { get; init; } = [];

    public ImmutableArray<string> Materials { get; init; } = [];

    /// <summary>Null where its maker states none.</summary>
    public Finish? Finish { get; init; }

    public WashCare Care { get; init; } = WashCare.None;

    public ImmutableArray<DeviceId> Alternates { get; init; } = [];

    public NoteSet Notes { get; init; } = NoteSet.Empty;

    /// <summary>False where something of what it says of washing was faulty and left out.</summary>
    public bool IsSoundForWashing { get; init; } = true;

    /// <summary>False where something of its definition was faulty and left out.</summary>
    public bool IsWhole { get; init; } = true;
}

/// <summary>What a device says over IO-Link. Octets as the process data length; the shortest cycle it allows.</summary>
public sealed record IoLinkData(BitRate Rate, int InputOctets, int OutputOctets, Quantity Cycle)
{
    /// <summary>Room for parameters in each message.</summary>
    public int OnRequestOctets { get; init; } = 1;

    /// <summary>Null where nobody describes it.</summary>
    public ProcessData? ProcessData { get; init; }

    /// <summary>Null where nobody says.</summary>
    public Located<DeviceIdentity>? Identity { get; init; }
}

/// <summary>The ports of a master or hub, by number, and what each and all of them may draw.</summary>
public sealed record PortSet(
    ImmutableArray<int> ClassA,
    ImmutableArray<int> ClassB,
    ImmutableArray<int> Switching,
    PinTwoOffer PinTwo
)
{
    public Quantity? CurrentPerPort { get; init; }

    public Quantity? CurrentInAll { get; init; }

    public Quantity? ExtraPerPort { get; init; }

    public Quantity? ExtraInAll { get; init; }

    /// <summary>Most process data from all ports; null where nobody says.</summary>
    public int? InputOctetsMax { get; init; }

    /// <summary>Most process data to all ports; null where nobody says.</summary>
    public int? OutputOctetsMax { get; init; }

    public IEnumerable<int> Numbers => ClassA.Concat(ClassB).Concat(Switching).Order();

    public PortClass? ClassOf(int port) =>
        ClassA.Contains(port) ? PortClass.A
        : ClassB.Contains(port) ? PortClass.B
        : Switching.Contains(port) ? PortClass.Switching
        : null;
}

/// <summary>A moulded cable: the lengths in stock, shortest first, and its cores in pin order (IEC 60757
/// letters).</summary>
public sealed record Cordset(
    ImmutableArray<Quantity> Lengths,
    ImmutableArray<string> Cores,
    Quantity Conductor,
    string Jacket
)
{
    public PlugForm DeviceEnd { get; init; }

    public PlugForm FarEnd { get; init; }

    /// <summary>Of both plugs; null where its maker states none.</summary>
    public Quantity? Torque { get; init; }

    /// <summary>Across the jacket; null where nobody says.</summary>
    public Quantity? Diameter { get; init; }

    /// <summary>Smallest when fixed; null where its maker states none.</summary>
    public Quantity? BendRadius { get; init; }
}

/// <summary>A cable that is cut to length and wired from a device into the box, its cores in the order of the
/// terminals.</summary>
public sealed record Leads(Quantity Conductor, string Jacket, bool IsShielded, ImmutableArray<LeadCore> Cores)
{
    /// <summary>What feeds the device takes its cores at once, without terminals of the box between.</summary>
    public bool IsStraight { get; init; }

    /// <summary>Across the jacket; null where nobody says.</summary>
    public Quantity? Diameter { get; init; }

    /// <summary>Smallest when fixed; null where its maker states none.</summary>
    public Quantity? BendRadius { get; init; }
}

/// <param name="Core">What is printed on it, or its colour in IEC 60757 letters.</param>
/// <param name="At">Terminal or pin at the device.</param>
public sealed record LeadCore(string Core, string At, string Carries)
{
    /// <summary>Green-yellow, and kept for protective earth (IEC 60204-1 13.2.2).</summary>
    public const string GreenYellow = "GNYE";

    /// <summary>Its cross-section where it is not that of the others.</summary>
    public Quantity? Conductor { get; init; }

    public bool IsProtectiveEarth => Carries == "protective earth";

    public CoreTarget LeadsTo { get; init; }

    /// <summary>Terminal of the drive, switch or starter that feeds it; empty where nobody says.</summary>
    public string FeederAt { get; init; } = "";
}
