using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Differences;

/// <summary>Finds rules that one side has and the other has not, and what each alone rules out there.</summary>
internal static class ChangedRules
{
    /// <summary>Beyond so many rules what each rules out is not computed.</summary>
    private const int CountedMax = 60;

    /// <param name="rules">The side that has the rules.</param>
    /// <param name="other">The side that lacks them, its options called as on this side.</param>
    /// <param name="count">Configurations of the other side; null where not computed.</param>
    public static ImmutableArray<ChangedRule> Of(
        RuleModel rules,
        RuleModel other,
        BigInteger? count,
        CompileLimits limits
    )
    {
        var known = other.Rules.Select(Key).ToHashSet(StringComparer.Ordinal);
        var offered = other.Options.Select(option => option.Id).ToHashSet();
        ImmutableArray<OrderRule> added =
        [
            .. rules.Rules.Where(rule => !known.Contains(Key(rule)) && Options(rule).All(offered.Contains)),
        ];
        return
        [
            .. added.Select(rule => new ChangedRule(
                rule,
                added.Length <= CountedMax ? count - Left(other, rule, limits) : null,
                count
            )),
        ];
    }

    private static BigInteger? Left(RuleModel model, OrderRule rule, CompileLimits limits) =>
        CompiledRules.Of(model with { Rules = model.Rules.Add(rule) }, [], limits).Diagram is { } diagram
            ? Counting.Count(diagram)
            : null;

    /// <summary>Equal for rules that say the same, wherever they stand.</summary>
    private static string Key(OrderRule rule) =>
        rule.Limit is { } limit
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{limit.AtMost} {string.Join(' ', limit.Counts.Select(share => $"{share.Option.Value}*{share.Each}"))}"
            )
            : ConditionKey.Of(rule.Meaning!);

    private static IEnumerable<OptionId> Options(OrderRule rule) =>
        rule.Limit is { } limit
            ? limit.Counts.Select(share => share.Option.Value)
            : rule.Meaning!.Mentions().Select(mention => mention.Option);
}
