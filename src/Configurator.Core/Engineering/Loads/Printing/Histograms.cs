using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>A range of weights and the configurations in it.</summary>
internal readonly record struct WeightRange(long From, long To, BigInteger Configurations);

/// <summary>Puts the weights of an exact histogram together in ranges of equal width, for printing only.</summary>
internal static class Histograms
{
    private const int RangesMax = 20;

    public static ImmutableArray<WeightRange> Of(ImmutableArray<WeightClass> histogram)
    {
        if (histogram.Length <= RangesMax)
        {
            return [.. histogram.Select(one => new WeightRange(one.Weight, one.Weight, one.Configurations))];
        }

        var least = histogram[0].Weight;
        var width = ((histogram[^1].Weight - least) / RangesMax) + 1;
        return
        [
            .. histogram
                .GroupBy(one => (one.Weight - least) / width)
                .Select(group => new WeightRange(
                    group.First().Weight,
                    group.Last().Weight,
                    group.Aggregate(BigInteger.Zero, (sum, one) => sum + one.Configurations)
                )),
        ];
    }

    /// <summary>In percent, with one digit after the point; what is less than that and not nothing says so.</summary>
    public static string Share(BigInteger part, BigInteger all)
    {
        var share = new Model.Units.Rational(part * 100, all);
        return part > 0 && part * 2000 < all ? "below 0.1 %" : share.ToString(decimals: 1) + " %";
    }
}
