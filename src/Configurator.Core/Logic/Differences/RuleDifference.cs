using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Rules;

namespace Configurator.Core.Logic.Differences;

/// <summary>
/// What a change of rules does to configurations. Options with a new id that lists the old one count as the same; an
/// option that only one side offers counts as never taken on the other.
/// </summary>
/// <param name="Before">Configurations before; null where not computed, as with all counts here.</param>
/// <param name="Lost">Configurations that were possible and are not any more.</param>
/// <param name="Won">Configurations that have become possible.</param>
/// <param name="LostExamples">At most five, with the fewest options, by new ids; <see cref="DifferenceExample.Because"/>
/// are rules after the change.</param>
/// <param name="WonExamples">At most five, with the fewest options; the rules are those before the change.</param>
public sealed record RuleDifference(
    BigInteger? Before,
    BigInteger? After,
    BigInteger? Lost,
    BigInteger? Won,
    ImmutableArray<DifferenceExample> LostExamples,
    ImmutableArray<DifferenceExample> WonExamples
)
{
    /// <summary>Rules that came, with what each rules out of the configurations before.</summary>
    public ImmutableArray<ChangedRule> Added { get; init; } = [];

    /// <summary>Rules that are gone, with what each ruled out of the configurations after.</summary>
    public ImmutableArray<ChangedRule> Gone { get; init; } = [];

    public bool IsNone => LostExamples.IsEmpty && WonExamples.IsEmpty;

    public static RuleDifference Of(OrderLogic before, OrderLogic after)
    {
        var machine = after.Machine.Id.Value;
        var old = RenamedRules.Between(before.Machine, after.Machine).Of(before.Model);
        var both = CompiledRules.Of(Both(old, after.Model), [], after.Limits).Diagram;
        BigInteger? kept = both is null ? null : Compiling.Counting.Count(both);
        var (countBefore, countAfter) = (before.Count(PartialOrder.Empty), after.Count(PartialOrder.Empty));
        return new(
            countBefore,
            countAfter,
            countBefore - kept,
            countAfter - kept,
            new DifferenceSearch(machine, old, after.Model).Find(),
            new DifferenceSearch(machine, after.Model, old).Find()
        )
        {
            Added = ChangedRules.Of(after.Model, old, countBefore, after.Limits),
            Gone = ChangedRules.Of(old, after.Model, countAfter, after.Limits),
        };
    }

    /// <summary>Options in the numbers that both allow, under the rules of both.</summary>
    private static RuleModel Both(RuleModel one, RuleModel other)
    {
        var numbers = other.Options.ToDictionary(option => option.Id);
        return new(
            [
                .. one
                    .Options.Where(option => numbers.ContainsKey(option.Id))
                    .Select(option => new OptionNumbers(
                        option.Id,
                        Math.Max(option.From, numbers[option.Id].From),
                        Math.Min(option.To, numbers[option.Id].To)
                    ))
                    .Where(option => option.From <= option.To),
            ],
            [.. one.Rules, .. other.Rules]
        );
    }
}
