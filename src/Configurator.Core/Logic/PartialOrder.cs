using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>What a customer has said so far: of each option named, between how many and how many.</summary>
public sealed record PartialOrder(ImmutableSortedDictionary<OptionId, NumberRange> Picks)
{
    public static PartialOrder Empty { get; } = new(ImmutableSortedDictionary<OptionId, NumberRange>.Empty);

    /// <summary>Every option of an order, each in the number ordered.</summary>
    public static PartialOrder Of(Order order) =>
        new(order.Picks.ToImmutableSortedDictionary(pick => pick.Key, pick => new NumberRange(pick.Value, pick.Value)));

    public PartialOrder With(OptionId option, NumberRange range) => new(Picks.SetItem(option, range));

    public PartialOrder Without(OptionId option) => new(Picks.Remove(option));
}

/// <summary>From so many to so many, both included.</summary>
public readonly record struct NumberRange(int From, int To)
{
    public static NumberRange AtLeastOne { get; } = new(1, int.MaxValue);

    public static NumberRange None { get; } = new(0, 0);

    public bool Contains(int count) => count >= From && count <= To;
}
