using System.Collections.Immutable;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Cables;

/// <summary>One cable as it is made, laid and labelled.</summary>
/// <param name="Name">Its designation.</param>
/// <param name="Cores">Every core, in the order of its pins or terminals.</param>
internal sealed record CableEntry(
    string Name,
    CableEnd From,
    CableEnd To,
    CableRun Run,
    ImmutableArray<CableCore> Cores
)
{
    private const long HalfMetre = 500_000;

    /// <summary>Anchor of its row in the cable schedule.</summary>
    public string Anchor => AnchorOf(Name);

    /// <summary>Ready-made, at least at one end.</summary>
    public Device? Cordset => Run.Cordset;

    /// <summary>The device at its end, where that is no master.</summary>
    public FitInstance? Instance => (Run as DeviceCable)?.Instance;

    /// <summary>Feeds a motor, heater or other load from inside the box.</summary>
    public bool IsPower => Cores.Any(core => core.Target == CoreTarget.Feeder);

    /// <summary>Is that core taken by what feeds the device, without a terminal of the box between?</summary>
    public bool IsStraight(CableCore core) => Leads is { IsStraight: true } && core.Target == CoreTarget.Feeder;

    public Leads? Leads => Instance?.Device.Leads;

    public Quantity? Diameter => Cordset?.Cordset?.Diameter ?? Leads?.Diameter;

    public Quantity? BendRadius => Cordset?.Cordset?.BendRadius ?? Leads?.BendRadius;

    public Quantity? Conductor => Cordset?.Cordset?.Conductor ?? Leads?.Conductor;

    public string Jacket => Cordset?.Cordset?.Jacket ?? Leads?.Jacket ?? "";

    /// <summary>One that is cut to length is cut to the next half metre; null where no path leads there.</summary>
    public Micrometres? Cut =>
        Run is { Cordset: null, Needed: { } needed }
            ? new((needed.Value + HalfMetre - 1) / HalfMetre * HalfMetre)
            : null;

    public static string AnchorOf(string name) =>
        "cable-"
        + string.Concat(
            name.Where(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-').Select(char.ToLowerInvariant)
        );
}

/// <summary>Where a cable ends.</summary>
/// <param name="Item">Designation of what it is plugged into or wired to, with its port or terminals.</param>
/// <param name="Plug">Null where its cores are wired by hand.</param>
internal sealed record CableEnd(Station Station, string Item, CablePlug? Plug);

/// <summary>The plug at the end of a cable.</summary>
/// <param name="Kind">As devices name it, such as <c>m12-a-4</c>.</param>
/// <param name="IsSocket">With sleeves; else with pins.</param>
internal sealed record CablePlug(string Kind, bool IsSocket, PlugForm Form, Quantity? Torque);

/// <summary>One core of a cable.</summary>
/// <param name="Number">Counts from 1 within its cable.</param>
/// <param name="Mark">Colour in IEC 60757 letters, or what is printed on it.</param>
/// <param name="From">Terminal in the box, or pin of the plug.</param>
/// <param name="To">Pin or terminal at the device.</param>
internal sealed record CableCore(int Number, string Mark, string From, string To, string Carries)
{
    /// <summary>Where it leads on to inside the box.</summary>
    public CoreTarget Target { get; init; }

    /// <summary>Counts from 1 the cores of its cable with that target.</summary>
    public int Nth { get; init; } = 1;

    /// <summary>Its cross-section where it is not that of the others.</summary>
    public Quantity? Conductor { get; init; }

    /// <summary>Terminal of what feeds it; empty where nobody says.</summary>
    public string FeederAt { get; init; } = "";

    public bool IsUsed => Carries != PinSignals.NotUsed;

    /// <summary>Is its mark a colour of IEC 60757 and no number?</summary>
    public bool IsColour => Mark.Length is 2 or 4 && Mark.All(char.IsAsciiLetterUpper);
}
