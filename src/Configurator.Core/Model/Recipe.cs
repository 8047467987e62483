using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>What a product and film need the sensors and actuators to be set to, by fit and parameter.</summary>
public sealed record Recipe(Located<RecipeId> Id, MachineId Machine, Text Title)
{
    public Text Product { get; init; } = Text.Empty;

    public Text Film { get; init; } = Text.Empty;

    public ImmutableArray<FitSettings> Settings { get; init; } = [];

    /// <summary>What it says for one instance: its own entry if there is one, else that of its fit.</summary>
    public FitSettings? For(InstanceKey key) =>
        Settings.FirstOrDefault(setting => setting.Fit.Value == key.Fit && setting.Ordinal == key.Ordinal)
        ?? Settings.FirstOrDefault(setting => setting.Fit.Value == key.Fit && setting.Ordinal is null);
}

/// <param name="Ordinal">Null where all instances of the fit are set alike.</param>
public sealed record FitSettings(
    Located<FitName> Fit,
    int? Ordinal,
    ImmutableSortedDictionary<string, SettingValue> Values
);

/// <summary>The record of where every cable of a delivered machine really is.</summary>
public sealed record AsBuilt(
    Located<AsBuiltId> Id,
    MachineId Machine,
    Text Title,
    DateOnly Delivered,
    Order Order,
    PortPlan Homes
);
