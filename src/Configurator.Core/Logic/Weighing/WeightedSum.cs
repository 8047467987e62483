using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Weighing;

/// <summary>Whole numbers that add up: a fixed part, and one for each condition that holds.</summary>
/// <param name="Fixed">What every configuration weighs.</param>
public sealed record WeightedSum(long Fixed, ImmutableArray<WeightedTerm> Terms)
{
    public static WeightedSum Zero { get; } = new(0, []);

    /// <summary>The same with every sign turned, so that the lightest becomes the heaviest.</summary>
    public WeightedSum Negated => new(-Fixed, [.. Terms.Select(term => term with { Weight = -term.Weight })]);

    /// <summary>What it comes to where each option is taken so many times.</summary>
    public long Of(Func<OptionId, int> quantity) =>
        Fixed + Terms.Where(term => term.When.Holds(quantity)).Sum(term => term.Weight);
}
