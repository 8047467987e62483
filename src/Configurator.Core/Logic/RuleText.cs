using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Says a rule of a machine in words.</summary>
public static class RuleText
{
    /// <summary>Options by id in backticks; lower case, no full stop.</summary>
    public static string Of(MachineRule rule) =>
        Banned(rule) is { } banned ? Never(rule, banned)
        : rule.When is { } when ? $"an order with {ConditionText.Of(when)} needs {ConditionText.Of(rule.Need)}"
        : $"every order needs {ConditionText.Of(rule.Need)}";

    /// <summary>What the rule keeps out of an order; null where it asks for something.</summary>
    public static Condition? Banned(MachineRule rule) =>
        rule.Need switch
        {
            NoneOf { Of: [NoneOf] } => null,
            NoneOf { Of: [var one] } => one,
            NoneOf { Of.Length: > 1 } none => new AnyOf(none.Of, none.Span),
            _ => null,
        };

    private static string Never(MachineRule rule, Condition banned)
    {
        var together = banned is AllOf { Of.Length: > 1 } ? " together" : "";
        var with = rule.When is { } when ? $" with {ConditionText.Of(when)}" : "";
        return $"{ConditionText.Of(banned)} cannot be ordered{together}{with}";
    }
}
