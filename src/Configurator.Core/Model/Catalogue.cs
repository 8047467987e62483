using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>Everything the definitions say, every name resolved, in ordinal order of ids.</summary>
public sealed record Catalogue(
    SiteSettings Site,
    ImmutableSortedDictionary<DeviceId, Device> Devices,
    ImmutableSortedDictionary<OptionId, Option> Options,
    ImmutableSortedDictionary<MachineId, Machine> Machines
)
{
    public ImmutableArray<PublishedConfiguration> Configurations { get; init; } = [];

    public ImmutableArray<Recipe> Recipes { get; init; } = [];

    public ImmutableArray<AsBuilt> AsBuilts { get; init; } = [];

    /// <summary>The user's page templates and the files beside them, for the stages that write pages.</summary>
    public ImmutableArray<SourceText> Templates { get; init; } = [];

    public ImmutableArray<SourceFile> Assets { get; init; } = [];
}

/// <summary>Settings of the site: its name, its languages (the first is the main one), and how things are
/// printed.</summary>
public sealed record SiteSettings(
    Text Title,
    ImmutableArray<string> Languages,
    DesignationStyle Designations,
    UnitStyle Units
)
{
    /// <summary>Where the site will stand, with a slash at the end; null where that is not said.</summary>
    public string? BaseAddress { get; init; }

    public static SiteSettings Default { get; } =
        new(Text.Of("Machine catalogue"), [Text.BaseLanguage], DesignationStyle.Iec81346, UnitStyle.Metric);
}

public enum DesignationStyle
{
    Iec81346,
    Flat,
}

public enum UnitStyle
{
    Metric,
    Us,
    Both,
}
