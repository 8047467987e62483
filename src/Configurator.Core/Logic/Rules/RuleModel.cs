using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Rules;

/// <summary>The options of a machine with the numbers in which each can be taken, and every rule about them.</summary>
internal sealed record RuleModel(ImmutableArray<OptionNumbers> Options, ImmutableArray<OrderRule> Rules)
{
    /// <summary>Reads a machine's options, choices, rules and limits, in that order.</summary>
    public static RuleModel Of(Machine machine) =>
        new(
            [
                .. machine.Options.Values.Select(option => new OptionNumbers(
                    option.Id.Value,
                    option.Quantity?.From ?? 1,
                    option.Quantity?.To ?? 1
                )),
            ],
            [
                .. machine.Options.Values.SelectMany(option => OptionRules.Of(option, machine)),
                .. machine.Choices.Select(ChoiceRules.Of),
                .. machine.Rules.Select(Of),
                .. machine.Limits.Select(Of),
            ]
        );

    private static OrderRule Of(MachineRule rule) =>
        new(RuleKind.MachineRule, RuleText.Of(rule), rule.Because, rule.Id.Span)
        {
            Meaning = rule.When is null ? rule.Need : Implies(rule.When, rule.Need),
        };

    private static OrderRule Of(CountLimit limit) =>
        new(
            RuleKind.Limit,
            FormattableString.Invariant($"`{limit.Id.Value}` allows at most {limit.AtMost} in all"),
            limit.Because,
            limit.Id.Span
        )
        {
            Limit = limit,
        };

    public static Condition Implies(Condition when, Condition need) =>
        new AnyOf([new NoneOf([when], when.Span), need], need.Span);
}

/// <summary>An option is not taken, or taken so many times.</summary>
internal readonly record struct OptionNumbers(OptionId Id, int From, int To);
