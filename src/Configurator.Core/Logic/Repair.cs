using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>One change of an order.</summary>
/// <param name="Before">How often the option was to be taken; none where it was not named.</param>
/// <param name="After">How often it is taken then; 0 where it is dropped.</param>
public sealed record OrderChange(OptionId Option, NumberRange Before, int After);

/// <summary>An order that works, and what of the given one it changes.</summary>
public sealed record Repair(ImmutableArray<OrderChange> Changes, PartialOrder Order)
{
    /// <summary>Choices that it leaves to be made, each with the members left.</summary>
    public ImmutableArray<OpenChoice> Open { get; init; } = [];
}
