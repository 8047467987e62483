using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>A model the builder sells, with every name resolved: what stands where, what can be ordered, what
/// fits.</summary>
/// <param name="Document">Prefix of its document numbers.</param>
public sealed record Machine(Located<MachineId> Id, Text Title, string Document, string Revision)
{
    public Text Summary { get; init; } = Text.Empty;

    public ImmutableArray<Located<string>> Formerly { get; init; } = [];

    public Quantity? Rate { get; init; }

    public Quantity? Pitch { get; init; }

    /// <summary>Fastest that product moves.</summary>
    public Quantity? Speed { get; init; }

    public int Lanes { get; init; } = 1;

    public required ImmutableArray<Area> Areas { get; init; }

    public required Route Route { get; init; }

    public required ImmutableArray<Station> Stations { get; init; }

    public required ControlArchitecture Control { get; init; }

    public ImmutableArray<Choice> Choices { get; init; } = [];

    public ImmutableArray<MachineRule> Rules { get; init; } = [];

    public ImmutableArray<CountLimit> Limits { get; init; } = [];

    /// <summary>How often options are ordered, as declared; empty where nothing is.</summary>
    public ImmutableArray<OrderShare> OrderMix { get; init; } = [];

    public ImmutableArray<Fit> Standard { get; init; } = [];

    public ImmutableArray<AcceptedDeviation> Accepted { get; init; } = [];

    /// <summary>Those offered on it, by id.</summary>
    public ImmutableSortedDictionary<OptionId, Option> Options { get; init; } =
        ImmutableSortedDictionary<OptionId, Option>.Empty;

    /// <summary>Every instance that any option offered or the standard machine can fit, by key.</summary>
    public ImmutableArray<FitInstance> Instances { get; init; } = [];

    /// <summary>Null where the machine does not say how it is cleaned: then nothing of it is checked.</summary>
    public Sanitation? Sanitation { get; init; }

    /// <summary>Every device of the library, by id: alternates are found here.</summary>
    public ImmutableSortedDictionary<DeviceId, Device> Library { get; init; } =
        ImmutableSortedDictionary<DeviceId, Device>.Empty;

    public PortPlan Plan { get; init; } = PortPlan.Empty;

    /// <summary>Prose for its page, Markdown.</summary>
    public SourceText? About { get; init; }

    /// <summary>False where something of its layout or control architecture was faulty and left out: its rules still
    /// hold, but
    /// nothing is engineered.</summary>
    public bool IsWhole { get; init; } = true;

    /// <summary>Options that have a fault or a fit that finds no place here: what they fit is not engineered.</summary>
    public ImmutableSortedSet<OptionId> FaultyOptions { get; init; } = [];

    /// <summary>What offers ports: every master, and every hub that some fit mounts, by name.</summary>
    public ImmutableSortedDictionary<MasterName, PortSet> Carriers =>
        Control
            .Masters.Select(master => KeyValuePair.Create(master.Name.Value, master.Ports))
            .Concat(
                Instances
                    .Where(instance =>
                        instance is { Device: { Kind: DeviceKind.Hub, Ports: not null }, Key.Ordinal: 1 }
                    )
                    .Select(instance =>
                        KeyValuePair.Create(new MasterName(instance.Key.Fit.Value), instance.Device.Ports!)
                    )
            )
            .DistinctBy(carrier => carrier.Key)
            .ToImmutableSortedDictionary();

    public Station? FindStation(StationId id) => Stations.FirstOrDefault(station => station.Id.Value == id);
}

/// <summary>How a part of the machine is washed and what it touches, after the hygiene standards.</summary>
public sealed record Area(Located<AreaId> Id, Text Title, AreaClass Class, WashMethod Wash);

public enum AreaClass
{
    Food,
    Splash,
    NonFood,
}

public enum WashMethod
{
    Dry,
    Rinse,
    Foam,
    HotHighPressure,
}

/// <summary>A named spot on the machine; cables leave the route at its node and drop to the devices.</summary>
public sealed record Station(Located<StationId> Id, Text Title, Area Area, NodeId Node, Micrometres Drop);

/// <summary>A set of options of which so many must be taken.</summary>
public sealed record Choice(Located<ChoiceId> Id, Text Title, Take Take, ImmutableArray<Located<OptionId>> Of)
{
    public Condition? When { get; init; }

    public Text? Because { get; init; }
}

public enum Take
{
    ExactlyOne,
    AtMostOne,
    OneOrMore,
}

/// <summary>Where <paramref name="When"/> holds (or always), <paramref name="Need"/> must hold.</summary>
public sealed record MachineRule(Located<RuleId> Id, Condition? When, Condition Need, Text? Because);

/// <summary>At most so many in all of what options count for, such as valve stations or guard inputs.</summary>
public sealed record CountLimit(
    Located<string> Id,
    Text Title,
    int AtMost,
    ImmutableArray<CountShare> Counts,
    Text? Because
);

/// <summary>What each one of an option counts for in a limit.</summary>
public sealed record CountShare(Located<OptionId> Option, int Each);

/// <summary>How often an option is ordered, as a share of all orders, from 0 to 100 percent.</summary>
public sealed record OrderShare(Located<OptionId> Option, Quantity Share);

/// <summary>A failed finding that a named role accepts, with the reason and the last day it stands (ISO
/// 8601).</summary>
public sealed record AcceptedDeviation(Located<string> Finding, Text By, Text Because, DateOnly Until);
