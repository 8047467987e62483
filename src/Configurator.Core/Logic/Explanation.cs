using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Why an order cannot be: picks and rules that cannot hold together. Without any one of them the others
/// can.</summary>
public sealed record Explanation(ImmutableArray<OptionId> Picks, ImmutableArray<OrderRule> Rules)
{
    /// <summary>Picks in a number in which their option can never be taken.</summary>
    public ImmutableArray<NumberFault> Numbers { get; init; } = [];
}

/// <param name="From">Smallest number in which it can be taken.</param>
/// <param name="To">Largest number in which it can be taken.</param>
public sealed record NumberFault(OptionId Option, int From, int To, NumberRange Ordered);
