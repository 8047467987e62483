using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The sum of a weight over all satisfying assignments, each counted by its measure, in one pass.</summary>
internal static class Average
{
    /// <summary>The measure of all satisfying assignments, and the sum of measure times weight; their quotient is the
    /// mean.</summary>
    public static (BigInteger Count, BigInteger Sum) Of(
        Diagram diagram,
        ulong[] within,
        ValueWeights weights,
        Measure measure
    )
    {
        if (diagram.IsEmpty)
        {
            return (BigInteger.Zero, BigInteger.Zero);
        }

        var pairs = new (BigInteger Count, BigInteger Sum)[diagram.NodeCount];
        for (var node = 0; node < pairs.Length; node++)
        {
            pairs[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => Leaf(
                    diagram.Variable[node],
                    diagram.Values[node] & within[diagram.Variable[node]],
                    weights,
                    measure
                ),
                NodeKind.All => Product(diagram.ChildrenOf(node), pairs),
                _ => Sum(diagram.ChildrenOf(node), pairs),
            };
        }

        var (count, sum) = pairs[^1];
        return (count, sum + (count * weights.Fixed));
    }

    private static (BigInteger, BigInteger) Leaf(int variable, ulong values, ValueWeights weights, Measure measure)
    {
        var (count, sum) = (BigInteger.Zero, BigInteger.Zero);
        for (; values != 0; values &= values - 1)
        {
            var value = BitOperations.TrailingZeroCount(values);
            count += measure.At(variable, value);
            sum += measure.At(variable, value) * weights.Of(variable, value);
        }

        return (count, sum);
    }

    private static (BigInteger, BigInteger) Product(
        ReadOnlySpan<int> children,
        (BigInteger Count, BigInteger Sum)[] pairs
    )
    {
        var (count, sum) = (BigInteger.One, BigInteger.Zero);
        foreach (var child in children)
        {
            sum = (sum * pairs[child].Count) + (count * pairs[child].Sum);
            count *= pairs[child].Count;
        }

        return (count, sum);
    }

    private static (BigInteger, BigInteger) Sum(ReadOnlySpan<int> children, (BigInteger Count, BigInteger Sum)[] pairs)
    {
        var (count, sum) = (BigInteger.Zero, BigInteger.Zero);
        foreach (var child in children)
        {
            count += pairs[child].Count;
            sum += pairs[child].Sum;
        }

        return (count, sum);
    }
}
