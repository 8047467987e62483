using System.Collections.Immutable;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Searching;
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
    public static RuleHealth Of(OrderLogic logic)
    {
        if (logic.Explain(PartialOrder.Empty) is { } nothing)
        {
            return new(true, nothing.Rules, [], [], [], []);
        }

        var states = logic.States(PartialOrder.Empty);
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
            [.. RedundantRules.Of(logic)],
            [.. logic.Machine.Choices.Select(choice => SingleWay(choice, states)).OfType<ChoiceProof>()]
        );
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

/// <summary>Rules that follow from the others. Of several that follow from each other the last one is named.</summary>
internal static class RedundantRules
{
    public static IEnumerable<RuleProof> Of(OrderLogic logic)
    {
        var search = logic.Search;
        var left = Enumerable.Range(0, logic.Rules.Length).ToList();
        var byRule = search.Options.Formula.Clauses.Where(clause => clause.Rule >= 0).ToLookup(clause => clause.Rule);
        for (var rule = logic.Rules.Length - 1; rule >= 0; rule--)
        {
            var others = left.Where(other => other != rule).ToDictionary(search.SwitchOf);
            var contrary = Contrary(search, byRule[rule]);
            if (!search.Solver.Solve([.. others.Keys, contrary]))
            {
                left.Remove(rule);
                var core = SmallestCore.Minimal(search.Solver, [.. search.Solver.Core]);
                yield return new(
                    logic.Rules[rule],
                    [
                        .. core.Where(others.ContainsKey)
                            .Select(member => logic.Rules[others[member]])
                            .OrderBy(other => other.Span),
                    ]
                );
            }
        }
    }

    /// <summary>A switch under which some clause of the rule is broken.</summary>
    private static int Contrary(RuleSearch search, IEnumerable<Clause> clauses)
    {
        var contrary = search.Solver.NewVariable();
        var broken = new List<int> { RuleSearch.Negative(contrary) };
        foreach (var clause in clauses)
        {
            var isBroken = search.Solver.NewVariable();
            broken.Add(RuleSearch.Positive(isBroken));
            foreach (var literal in clause.Literals.SelectMany(search.Any))
            {
                search.Solver.Add(RuleSearch.Negative(isBroken), literal ^ 1);
            }
        }

        search.Solver.Add([.. broken]);
        return RuleSearch.Positive(contrary);
    }
}
