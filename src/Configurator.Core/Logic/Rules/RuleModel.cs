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
        new(
            RuleKind.MachineRule,
            RuleText.Of(rule),
            rule.Because,
            rule.Id.Span
        )
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

/// <summary>The rules that stand in an option.</summary>
internal static class OptionRules
{
    public static IEnumerable<OrderRule> Of(Option option, Machine machine)
    {
        var id = option.Id.Value;
        var taken = new OptionCount(id, 1, null, option.Id.Span);
        var requires = option.Requires.Select(requirement => new OrderRule(
            RuleKind.Requires,
            $"`{id}` needs {ConditionText.Of(requirement.Condition)}",
            requirement.Because,
            requirement.Condition.Span
        )
        {
            Meaning = RuleModel.Implies(taken, requirement.Condition),
        });
        var exclusions = option.NotWith.Select(link => new OrderRule(
            RuleKind.NotWith,
            $"`{id}` and `{link.Other.Value}` cannot be ordered together",
            link.Because,
            link.Other.Span
        )
        {
            Meaning = new NoneOf([new AllOf([taken, Taken(link)], link.Other.Span)], link.Other.Span),
        });
        var companions = option.ComesWith.Select(link => new OrderRule(
            RuleKind.ComesWith,
            $"`{id}` comes with `{link.Other.Value}`"
                + (
                    machine.Options.ContainsKey(link.Other.Value)
                        ? ""
                        : $", which is not offered on `{machine.Id.Value}`"
                ),
            link.Because,
            link.Other.Span
        )
        {
            Meaning = RuleModel.Implies(taken, Taken(link)),
        });
        return requires.Concat(exclusions).Concat(companions);
    }

    private static OptionCount Taken(OptionLink link) => new(link.Other.Value, 1, null, link.Other.Span);
}

/// <summary>What a choice asks for.</summary>
internal static class ChoiceRules
{
    /// <summary>Each two of the members that cannot both be taken are a condition of their own.</summary>
    private const int MembersMax = 300;

    /// <exception cref="TooEntangledException">It has more members than any choice that somebody can make.</exception>
    public static OrderRule Of(Choice choice)
    {
        if (choice.Of.Length > MembersMax)
        {
            throw new TooEntangledException();
        }

        ImmutableArray<Condition> members =
        [
            .. choice.Of.Select(option => new OptionCount(option.Value, 1, null, option.Span)),
        ];
        Condition one = new AnyOf(members, choice.Id.Span);
        Condition notTwo = new AllOf(
            [
                .. members.SelectMany(
                    (left, i) =>
                        members
                            .Skip(i + 1)
                            .Select(right => new NoneOf([new AllOf([left, right], left.Span)], left.Span))
                ),
            ],
            choice.Id.Span
        );
        var met = choice.Take switch
        {
            Take.ExactlyOne => new AllOf([one, notTwo], choice.Id.Span),
            Take.AtMostOne => notTwo,
            _ => one,
        };
        return new(RuleKind.Choice, Statement(choice), choice.Because, choice.Id.Span)
        {
            Meaning = choice.When is null ? met : RuleModel.Implies(choice.When, met),
            Choice = choice,
        };
    }

    private static string Statement(Choice choice)
    {
        var wanted = choice.Take switch
        {
            Take.ExactlyOne => "exactly one",
            Take.AtMostOne => "at most one",
            _ => "one or more",
        };
        return $"`{choice.Id.Value}` takes {wanted} of {ConditionText.List(choice.Of.Select(option => option.Value), "and")}"
            + (choice.When is null ? "" : $" with {ConditionText.Of(choice.When)}");
    }
}
