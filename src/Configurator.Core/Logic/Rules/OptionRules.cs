using Configurator.Core.Model;

namespace Configurator.Core.Logic.Rules;

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
