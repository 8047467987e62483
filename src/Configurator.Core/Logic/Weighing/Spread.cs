using System.Numerics;

namespace Configurator.Core.Logic.Weighing;

/// <summary>How many assignments weigh how much, in ascending order of weights.</summary>
internal sealed class Spread(long[] weights, BigInteger[] counts)
{
    public static Spread Nothing { get; } = new([], []);

    public long[] Weights { get; } = weights;

    public BigInteger[] Counts { get; } = counts;

    public bool IsPoint => Weights.Length == 1;

    public static Spread Of(Dictionary<long, BigInteger> counts)
    {
        long[] weights = [.. counts.Keys.Order()];
        return new(weights, Array.ConvertAll(weights, weight => counts[weight]));
    }

    /// <summary>Every weight moved by one, every count multiplied.</summary>
    public Spread Moved(long weight, BigInteger count) =>
        weight == 0 && count.IsOne
            ? this
            : new(
                Array.ConvertAll(Weights, own => own + weight),
                count.IsOne ? Counts : Array.ConvertAll(Counts, own => own * count)
            );
}
