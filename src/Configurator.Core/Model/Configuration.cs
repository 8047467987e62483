using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>What the customer ticks: options and how many of each. Not yet completed, not yet proved.</summary>
public sealed record Order(MachineId Machine, ImmutableSortedDictionary<OptionId, int> Picks)
{
    /// <summary>Each option once, or as often as its quantity says.</summary>
    public static Order Of(MachineId machine, IEnumerable<OptionId> options, IEnumerable<OptionQuantity> quantities)
    {
        var counts = quantities
            .GroupBy(quantity => quantity.Option)
            .ToDictionary(group => group.Key, group => group.First().Count);
        return new(
            machine,
            options
                .Concat(counts.Keys)
                .Distinct()
                .ToImmutableSortedDictionary(option => option, option => counts.GetValueOrDefault(option, 1))
        );
    }
}

/// <summary>An order completed by what comes with it.</summary>
/// <param name="Quantities">Every option taken and how often, at least once.</param>
/// <param name="Added">Those taken because they come with another one.</param>
public sealed record Configuration(
    MachineId Machine,
    ImmutableSortedDictionary<OptionId, int> Quantities,
    ImmutableSortedSet<OptionId> Added
)
{
    public int QuantityOf(OptionId option) => Quantities.GetValueOrDefault(option);
}

/// <summary>A configuration with a file: an order under document control.</summary>
/// <param name="Document">Its document number.</param>
public sealed record PublishedConfiguration(
    Located<ConfigurationId> Id,
    MachineId Machine,
    Text Title,
    Located<string> Document,
    string Revision
)
{
    public ImmutableArray<Located<OptionId>> Options { get; init; } = [];

    public ImmutableArray<Located<OptionQuantity>> Quantities { get; init; } = [];

    public ImmutableArray<Located<RecipeId>> Recipes { get; init; } = [];

    /// <summary>Null while it is a draft.</summary>
    public Release? Released { get; init; }

    public ImmutableArray<RevisionStep> History { get; init; } = [];

    public ImmutableArray<AcceptedDeviation> Accepted { get; init; } = [];

    public SourceSpan Span => Id.Span;

    /// <summary>The order as ticked.</summary>
    public Order Order =>
        Order.Of(Machine, Options.Select(option => option.Value), Quantities.Select(quantity => quantity.Value));
}

public readonly record struct OptionQuantity(OptionId Option, int Count);

/// <summary>Who approved a revision, by role, and when (ISO 8601).</summary>
public sealed record Release(Text By, DateOnly On);

public sealed record RevisionStep(string Revision, DateOnly On, Text By, Text Change);
