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

    /// <summary>Which raised parts bars hold while washing; they come out last before the start.</summary>
    public ImmutableArray<Text> Bars { get; init; } = [];

    /// <summary>With the main switch on and the air valve still shut.</summary>
    public ImmutableArray<Text> PowerOn { get; init; } = [];

    /// <summary>With the air on and every bar still in: what is tried before anything is started.</summary>
    public ImmutableArray<Text> Restart { get; init; } = [];

    /// <summary>What has to be seen in the first run, with every guard shut.</summary>
    public ImmutableArray<Text> FirstRun { get; init; } = [];

    /// <summary>Gases and media that stay locked until the machine has run empty.</summary>
    public ImmutableArray<Text> Media { get; init; } = [];
}
