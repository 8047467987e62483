using System.Collections.Immutable;

namespace Configurator.Core.Model;

/// <summary>What a crew has to know of a machine, an option or a device before and after a wash.</summary>
public sealed record WashCare
{
    public static WashCare None { get; } = new();

    public ImmutableArray<Hazard> Hazards { get; init; } = [];

    public ImmutableArray<EnergyCare> Energies { get; init; } = [];

    public ImmutableArray<Text> Cover { get; init; } = [];

    public ImmutableArray<Text> NeverCover { get; init; } = [];

    /// <summary>To take off or to open.</summary>
    public ImmutableArray<Text> Remove { get; init; } = [];

    public ImmutableArray<Text> Inspect { get; init; } = [];

    public ImmutableArray<Text> Restart { get; init; } = [];
}

/// <summary>One energy while washing.</summary>
/// <param name="Why">Or where it is locked; empty where nothing needs saying.</param>
public sealed record EnergyCare(Energy Energy, EnergyState State, Text Why);

/// <summary>Energies and supplies that a machine can have, in the order in which they are made safe.</summary>
public enum Energy
{
    Electricity,
    WorkingAir,
    PurgeAir,
    Nitrogen,
    Peroxide,
    Water,
    CleaningCircuit,
    ProductPressure,
    Heat,
    Gravity,
    Laser,
    Ultraviolet,
    CoderMains,
}

/// <summary>What is done with an energy while washing.</summary>
public enum EnergyState
{
    Locked,

    /// <summary>Left to fall to nothing: vented, cooled, blocked, discharged.</summary>
    LetDown,
    KeptOn,
}

/// <summary>What can hurt someone; each has its caution.</summary>
public enum Hazard
{
    HotSurface,
    HotWater,
    CrushingHead,
    StoredAir,
    Nitrogen,
    Laser,
    Ultraviolet,
    Peroxide,
    CleaningCircuit,
    Blades,
    BrokenGlass,
}
