using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>All that can be said of an order as it stands.</summary>
/// <param name="Left">Configurations that fit it; null where not computed.</param>
/// <param name="Forced">Options not named that every way to complete it takes.</param>
/// <param name="RuledOut">Options not named that no way to complete it takes, though other orders could.</param>
/// <param name="Free">Options not named that may still be taken or left out.</param>
/// <param name="Open">Choices that are still to be made, each with the members left.</param>
/// <param name="Explanation">Null where the order is possible.</param>
public sealed record OrderAnswer(
    PartialOrder Order,
    BigInteger? Left,
    ImmutableArray<OptionId> Forced,
    ImmutableArray<OptionId> RuledOut,
    ImmutableArray<OptionId> Free,
    ImmutableArray<OpenChoice> Open,
    Explanation? Explanation,
    ImmutableArray<Repair> Nearest
)
{
    public bool IsPossible => Explanation is null;

    public static OrderAnswer Of(OrderLogic logic, PartialOrder order)
    {
        if (logic.Explain(order) is { } explanation)
        {
            var nearest = logic
                .Nearest(order, isComplete: false)
                .Select(repair => repair with { Open = OpenChoice.All(logic.Machine, logic.States(repair.Order)) });
            return new(order, BigInteger.Zero, [], [], [], [], explanation, [.. nearest]);
        }

        var before = logic.States(PartialOrder.Empty);
        var states = logic.States(order);
        var others = states.Where(option => !order.Picks.ContainsKey(option.Key)).ToList();
        return new(
            order,
            logic.Count(order),
            [.. others.Where(option => option.Value.IsForced).Select(option => option.Key)],
            [
                .. others
                    .Where(option => option.Value.IsRuledOut && !before[option.Key].IsRuledOut)
                    .Select(option => option.Key),
            ],
            [.. others.Where(option => option.Value.IsFree).Select(option => option.Key)],
            OpenChoice.All(logic.Machine, states),
            null,
            []
        );
    }
}

/// <param name="Members">Those that can still be taken.</param>
public sealed record OpenChoice(Choice Choice, ImmutableArray<OptionId> Members)
{
    public static ImmutableArray<OpenChoice> All(
        Machine machine,
        ImmutableSortedDictionary<OptionId, OptionState> states
    ) => [.. machine.Choices.Select(choice => Of(choice, states)).OfType<OpenChoice>()];

    /// <summary>The same choice with the same members left.</summary>
    public bool IsLike(OpenChoice other) =>
        Choice.Id.Value == other.Choice.Id.Value && Members.SequenceEqual(other.Members);

    /// <summary>Null where nothing is left to choose.</summary>
    public static OpenChoice? Of(Choice choice, ImmutableSortedDictionary<OptionId, OptionState> states)
    {
        ImmutableArray<OptionId> members =
        [
            .. choice
                .Of.Select(option => option.Value)
                .Where(option => states.TryGetValue(option, out var state) && !state.IsRuledOut),
        ];
        return choice.Take == Take.AtMostOne || members.Any(option => states[option].IsForced) || members.IsEmpty
            ? null
            : new(choice, members);
    }
}
