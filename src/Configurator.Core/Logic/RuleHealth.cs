using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>What is odd about the rules of a machine, each with the rules that prove it.</summary>
/// <param name="IsEmpty">No order works at all.</param>
public sealed record RuleHealth(
    bool IsEmpty,
    ImmutableArray<OrderRule> WhyEmpty,
    ImmutableArray<OptionProof> NeverOrderable,
    ImmutableArray<OptionProof> AlwaysIncluded,
    ImmutableArray<RuleProof> Redundant,
    ImmutableArray<ChoiceProof> SingleWayOut
)
{
    /// <summary>Rules that were not tried on whether they add anything: there are too many of them.</summary>
    public int Untried { get; init; }

    public static RuleHealth Of(OrderLogic logic)
    {
        if (logic.Explain(PartialOrder.Empty) is { } nothing)
        {
            return new(true, nothing.Rules, [], [], [], []);
        }

        var states = logic.States(PartialOrder.Empty);
        var (redundant, untried) = RedundantRules.Of(logic);
        return new(
            false,
            [],
            [
                .. states
                    .Where(option => option.Value.IsRuledOut)
                    .Select(option => Proof(logic, option.Key, NumberRange.AtLeastOne)),
            ],
            [
                .. states
                    .Where(option => option.Value.IsForced)
                    .Select(option => Proof(logic, option.Key, NumberRange.None)),
            ],
            redundant,
            [.. logic.Machine.Choices.Select(choice => SingleWay(choice, states)).OfType<ChoiceProof>()]
        )
        {
            Untried = untried,
        };
    }

    private static OptionProof Proof(OrderLogic logic, OptionId option, NumberRange contrary) =>
        new(option, logic.Explain(PartialOrder.Empty.With(option, contrary))!.Rules);

    /// <summary>Something must be taken, and only one member can be.</summary>
    private static ChoiceProof? SingleWay(Choice choice, ImmutableSortedDictionary<OptionId, OptionState> states)
    {
        ImmutableArray<OptionId> possible =
        [
            .. choice
                .Of.Select(option => option.Value)
                .Where(option => states.TryGetValue(option, out var state) && !state.IsRuledOut),
        ];
        return choice.Take != Take.AtMostOne && choice.When is null && possible is [var only]
            ? new(choice, only)
            : null;
    }
}

/// <param name="Because">Rules that cannot hold together with the contrary.</param>
public sealed record OptionProof(OptionId Option, ImmutableArray<OrderRule> Because);

/// <param name="Because">Rules from which this one follows.</param>
public sealed record RuleProof(OrderRule Rule, ImmutableArray<OrderRule> Because);

public sealed record ChoiceProof(Choice Choice, OptionId Only);
