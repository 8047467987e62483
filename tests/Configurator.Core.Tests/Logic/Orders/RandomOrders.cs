using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>What customers may say: at least once, not at all, in some numbers, even in those there are not.</summary>
internal static class RandomOrders
{
    private const int PicksMax = 8;

    private static readonly Gen<NumberRange> Ranges = Gen.Frequency(
        (60, NumberRange.AtLeastOne),
        (12, NumberRange.None),
        (12, new NumberRange(1, 1)),
        (1, new NumberRange(2, 2)),
        (1, new NumberRange(0, 2)),
        (1, new NumberRange(2, 3)),
        (1, new NumberRange(5, 5))
    );

    private static readonly Gen<NumberRange> Exact = Gen.Frequency((60, 1), (3, 2), (1, 3), (1, 5))
        .Select(count => new NumberRange(count, count));

    public static Gen<PartialOrder> Partial(ImmutableArray<OptionId> options) => Of(options, Ranges);

    public static Gen<PartialOrder> Complete(ImmutableArray<OptionId> options) => Of(options, Exact);

    private static Gen<OptionId> Names(ImmutableArray<OptionId> options) =>
        Gen.Frequency((60, Gen.OneOf(options.ToArray())), (1, Gen.Const(RandomConditions.NotOffered)));

    private static Gen<PartialOrder> Of(ImmutableArray<OptionId> options, Gen<NumberRange> ranges) =>
        Gen.Select(Names(options), ranges)
            .Array[0, PicksMax]
            .Select(picks => picks.Aggregate(PartialOrder.Empty, (order, pick) => order.With(pick.Item1, pick.Item2)));
}
