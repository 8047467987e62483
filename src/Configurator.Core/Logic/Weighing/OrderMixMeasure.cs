using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Logic.Weighing;

/// <summary>
/// What a declared order mix makes of configurations. An option with the share p counts p where it is taken and 1 - p
/// where it is not; one that can be taken in n numbers counts p / n in each of them; one without a share counts the
/// same in every number. A configuration counts the product over all options, divided by the sum over all that are
/// allowed. Options are weighted as if ordered independently; rules then shift the shares that come out.
/// </summary>
internal static class OrderMixMeasure
{
    public static Measure Of(
        IReadOnlyCollection<int> sizes,
        ImmutableSortedDictionary<OptionId, OptionVariable> options,
        IEnumerable<OrderShare> mix
    )
    {
        var measure = Measure.OneEach(sizes.Count);
        foreach (var share in mix)
        {
            if (options.TryGetValue(share.Option.Value, out var variable))
            {
                ref var values = ref measure.Of[variable.Variable];
                values ??= [.. Enumerable.Repeat(BigInteger.One, variable.Counts.Length)];
                Weight(values, variable.Counts, share.Share.InBase / 100);
            }
        }

        return measure;
    }

    /// <summary>Times the share's denominator and the count of numbers, so that all stay whole.</summary>
    private static void Weight(BigInteger[] values, ImmutableArray<int> counts, Rational share)
    {
        var numbers = counts.Where(count => count > 0).Distinct().Count();
        for (var value = 0; value < values.Length; value++)
        {
            values[value] *= counts[value] > 0 ? share.Numerator : (share.Denominator - share.Numerator) * numbers;
        }
    }
}
