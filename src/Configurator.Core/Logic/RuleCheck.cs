using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Evaluates every rule of a machine on one configuration.</summary>
public static class RuleCheck
{
    /// <summary>All rules that it breaks, in the order of options, choices and rules.</summary>
    public static ImmutableArray<BrokenRule> Broken(Machine machine, Configuration configuration)
    {
        var taken = configuration
            .Quantities.Keys.Where(machine.Options.ContainsKey)
            .Select(id => machine.Options[id])
            .ToList();
        return
        [
            .. taken.SelectMany(option => Of(option, configuration)),
            .. machine.Choices.Select(choice => Of(choice, configuration)).OfType<BrokenRule>(),
            .. machine.Rules.Select(rule => Of(rule, configuration)).OfType<BrokenRule>(),
            .. machine.Limits.Select(limit => Of(limit, configuration)).OfType<BrokenRule>(),
        ];
    }

    private static IEnumerable<BrokenRule> Of(Option option, Configuration configuration) =>
        Requires(option, configuration)
            .Concat(Exclusions(option, configuration))
            .Concat(Companions(option, configuration))
            .Concat(Quantities(option, configuration));

    private static IEnumerable<BrokenRule> Requires(Option option, Configuration configuration) =>
        option
            .Requires.Where(requirement => !requirement.Condition.Holds(configuration.QuantityOf))
            .Select(requirement => new BrokenRule(
                RuleKind.Requires,
                $"`{option.Id.Value}` needs {ConditionText.Of(requirement.Condition)}",
                requirement.Because,
                requirement.Condition.Span
            )
            {
                Concerned = [option.Id.Value],
            });

    private static IEnumerable<BrokenRule> Exclusions(Option option, Configuration configuration) =>
        option
            .NotWith.Where(link => configuration.QuantityOf(link.Other.Value) > 0)
            .Select(link => new BrokenRule(
                RuleKind.NotWith,
                $"`{option.Id.Value}` and `{link.Other.Value}` cannot be ordered together",
                link.Because,
                link.Other.Span
            )
            {
                Concerned = [option.Id.Value, link.Other.Value],
            });

    /// <summary>Only an option that is not offered can be missing here: all others were added on completion.</summary>
    private static IEnumerable<BrokenRule> Companions(Option option, Configuration configuration) =>
        option
            .ComesWith.Where(link => configuration.QuantityOf(link.Other.Value) == 0)
            .Select(link => new BrokenRule(
                RuleKind.ComesWith,
                $"`{option.Id.Value}` comes with `{link.Other.Value}`, which is not offered on `{configuration.Machine}`",
                link.Because,
                link.Other.Span
            )
            {
                Concerned = [option.Id.Value],
            });

    private static IEnumerable<BrokenRule> Quantities(Option option, Configuration configuration)
    {
        var range = option.Quantity ?? new(1, 1, Text.Empty);
        var count = configuration.QuantityOf(option.Id.Value);
        if (count < range.From || count > range.To)
        {
            var allowed =
                range.From == range.To
                    ? FormattableString.Invariant($"{range.From}")
                    : FormattableString.Invariant($"{range.From} to {range.To}");
            yield return new(
                RuleKind.Quantity,
                FormattableString.Invariant($"`{option.Id.Value}` can be ordered {allowed} times, not {count}"),
                null,
                option.Id.Span
            )
            {
                Concerned = [option.Id.Value],
            };
        }
    }

    private static BrokenRule? Of(Choice choice, Configuration configuration)
    {
        if (choice.When is { } when && !when.Holds(configuration.QuantityOf))
        {
            return null;
        }

        ImmutableArray<OptionId> taken =
        [
            .. choice.Of.Select(option => option.Value).Where(option => configuration.QuantityOf(option) > 0),
        ];
        var isMet = choice.Take switch
        {
            Take.ExactlyOne => taken.Length == 1,
            Take.AtMostOne => taken.Length <= 1,
            _ => taken.Length >= 1,
        };
        return isMet
            ? null
            : new(RuleKind.Choice, Statement(choice, taken), choice.Because, choice.Id.Span) { Concerned = taken };
    }

    private static string Statement(Choice choice, ImmutableArray<OptionId> taken)
    {
        var wanted = choice.Take switch
        {
            Take.ExactlyOne => "exactly one",
            Take.AtMostOne => "at most one",
            _ => "one or more",
        };
        return $"`{choice.Id.Value}` takes {wanted} of {ConditionText.List(choice.Of.Select(option => option.Value), "and")}; "
            + (taken.IsEmpty ? "none is ordered" : $"{ConditionText.List(taken, "and")} are ordered");
    }

    private static BrokenRule? Of(CountLimit limit, Configuration configuration)
    {
        var sum = limit.Counts.Sum(share => share.Each * configuration.QuantityOf(share.Option.Value));
        return sum <= limit.AtMost
            ? null
            : new(
                RuleKind.Limit,
                FormattableString.Invariant(
                    $"`{limit.Id.Value}` allows at most {limit.AtMost} in all; this order counts {sum}"
                ),
                limit.Because,
                limit.Id.Span
            )
            {
                Concerned =
                [
                    .. limit
                        .Counts.Select(share => share.Option.Value)
                        .Where(option => configuration.QuantityOf(option) > 0),
                ],
            };
    }

    private static BrokenRule? Of(MachineRule rule, Configuration configuration)
    {
        if (
            (rule.When is { } when && !when.Holds(configuration.QuantityOf))
            || rule.Need.Holds(configuration.QuantityOf)
        )
        {
            return null;
        }

        ImmutableArray<OptionId> concerned =
        [
            .. (rule.When?.Mentions() ?? [])
                .Concat(rule.Need.Mentions())
                .Select(mention => mention.Option)
                .Where(option => configuration.QuantityOf(option) > 0)
                .Distinct(),
        ];
        return new(RuleKind.MachineRule, RuleText.Of(rule), rule.Because, rule.Id.Span) { Concerned = concerned };
    }
}
