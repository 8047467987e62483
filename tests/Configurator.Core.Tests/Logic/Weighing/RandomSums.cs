using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Weighing;

/// <summary>A machine, an order of it, sums over conditions of every form, and a limit for each sum.</summary>
internal sealed record WeighingCase(
    Machine Machine,
    PartialOrder Order,
    ImmutableArray<WeightedSum> Sums,
    ImmutableArray<long> Limits
)
{
    public string Words =>
        RandomMachines.Words((Machine, Order))
        + string.Concat(Sums.Zip(Limits, (sum, limit) => FormattableString.Invariant($"{Said(sum)} <= {limit}\n")));

    private static string Said(WeightedSum sum) =>
        FormattableString.Invariant($"{sum.Fixed}")
        + string.Concat(
            sum.Terms.Select(term =>
                FormattableString.Invariant($" + {term.Weight} if {ConditionText.Of(term.When)}")
            )
        );
}

internal static class RandomSums
{
    /// <summary>Some sums have small weights, so that many configurations weigh the same, others wide ones.</summary>
    private static readonly Gen<long> Weights = Gen.Frequency(
        (6, Gen.Long[0, 4]),
        (2, Gen.Long[-5, 5]),
        (2, Gen.Long[-1_000_000, 9_000_000])
    );

    public static Gen<WeighingCase> Of(int options, long ways) =>
        from both in RandomMachines.WithOrder(options, ways)
        from sums in Sum([.. both.Machine.Options.Keys]).Array[3]
        from limits in Gen.Frequency((6, Gen.Long[0, 12]), (1, Gen.Long[-3, 9_000_000])).Array[3]
        select new WeighingCase(both.Machine, both.Order, [.. sums], [.. limits]);

    public static Gen<WeightedSum> Sum(ImmutableArray<OptionId> options) =>
        from terms in Gen.Select(Condition(options), Weights).Array[0, options.Length + 2]
        from fixedPart in Gen.Frequency((1, Gen.Const(0L)), (1, Gen.Long[-3, 20]))
        select new WeightedSum(
            fixedPart,
            [.. terms.Select(term => new WeightedTerm(term.Item1, term.Item2))]
        );

    /// <summary>Mostly one option in some number, as fits are; else anything.</summary>
    private static Gen<Condition> Condition(ImmutableArray<OptionId> options) =>
        Gen.Frequency<Condition>(
            (3, Gen.OneOf(options.ToArray()).Select(Condition (option) => Machines.Taken(option))),
            (2, RandomConditions.Of(Gen.OneOf(options.ToArray())))
        );
}
