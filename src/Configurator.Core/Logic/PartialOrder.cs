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

/// <summary>What an order leaves of an option: the numbers in which it can still be taken, 0 among them where it may
/// be left out.</summary>
public sealed record OptionState(ImmutableArray<int> Possible)
{
    public bool IsForced => !Possible.Contains(0) && !Possible.IsEmpty;

    public bool IsRuledOut => Possible is [0] or [];

    public bool IsFree => Possible.Contains(0) && Possible.Length > 1;
}

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
