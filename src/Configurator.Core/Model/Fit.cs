using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>One device, mounted once at each of its stations, that an option or the standard machine brings.</summary>
public sealed record Fit(Located<FitName> Name, Located<DeviceId> Device, ImmutableArray<Located<StationId>> Stations)
{
    public Text Purpose { get; init; } = Text.Empty;

    public FitPer Per { get; init; }

    public Condition? When { get; init; }

    public Wiring Wiring { get; init; }

    /// <summary>Parameters that every recipe must supply.</summary>
    public ImmutableArray<Located<string>> Settings { get; init; } = [];

    /// <summary>Parameters that are the same in every recipe.</summary>
    public ImmutableSortedDictionary<string, Located<string>> Set { get; init; } =
        ImmutableSortedDictionary<string, Located<string>>.Empty;

    public Quantity? PositionError { get; init; }

    /// <summary>How much of its actuator current flows at one time with others; null for all of it.</summary>
    public Quantity? Simultaneity { get; init; }

    /// <summary>Speed of what it sees; null where it is the machine's.</summary>
    public Quantity? MovesAt { get; init; }

    /// <summary>From event to answer, at most; null where it does not matter.</summary>
    public Quantity? AnswerWithin { get; init; }

    /// <summary>What drives, switches or feeds it from inside the box: the first of these that is fitted.</summary>
    public ImmutableArray<Located<string>> FedBy { get; init; } = [];

    /// <summary>Stop functions of the machine that drop its safety outputs; empty where nobody says.</summary>
    public ImmutableArray<Located<string>> DroppedBy { get; init; } = [];

    /// <summary>The stop function that it gives; null for what gives none.</summary>
    public Located<string>? Stop { get; init; }

    /// <summary>It has a network cable of its own from the box, beside its other one.</summary>
    public bool HasNetwork { get; init; }

    /// <summary>What differs on some machines.</summary>
    public ImmutableSortedDictionary<MachineId, FitDifference> On { get; init; } =
        ImmutableSortedDictionary<MachineId, FitDifference>.Empty;

    public Located<DeviceId> DeviceOn(MachineId machine) => On.GetValueOrDefault(machine)?.Device ?? Device;

    public ImmutableArray<Located<StationId>> StationsOn(MachineId machine) =>
        On.GetValueOrDefault(machine)?.Stations ?? Stations;
}

/// <summary>What one machine does differently; null where it does not.</summary>
/// <param name="Span">Where the machine is named.</param>
public sealed record FitDifference(
    Located<DeviceId>? Device,
    ImmutableArray<Located<StationId>>? Stations,
    SourceSpan Span
);

/// <summary>All instances come with the option, or the k-th one when it is taken k times.</summary>
public enum FitPer
{
    Option,
    Quantity,
}

/// <summary>To a port of a master or hub, by a cable of its own into the control box, or mounted inside it.</summary>
public enum Wiring
{
    Port,
    Direct,
    Inside,
}
