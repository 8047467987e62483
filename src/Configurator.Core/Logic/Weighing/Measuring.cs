using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The measure of all satisfying assignments.</summary>
internal static class Measuring
{
    /// <summary>By node: the measure of the assignments of its variables.</summary>
    public static BigInteger[] PerNode(Diagram diagram, ulong[] within, Measure measure)
    {
        var sums = new BigInteger[diagram.NodeCount];
        for (var node = 0; node < sums.Length; node++)
        {
            var children = diagram.ChildrenOf(node);
            sums[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => Leaf(
                    diagram.Variable[node],
                    diagram.Values[node] & within[diagram.Variable[node]],
                    measure
                ),
                NodeKind.All => Product(children, sums),
                _ => Sum(children, sums),
            };
        }

        return sums;
    }

    private static BigInteger Leaf(int variable, ulong values, Measure measure)
    {
        var sum = BigInteger.Zero;
        for (; values != 0; values &= values - 1)
        {
            sum += measure.At(variable, BitOperations.TrailingZeroCount(values));
        }

        return sum;
    }

    private static BigInteger Product(ReadOnlySpan<int> children, BigInteger[] sums)
    {
        var product = BigInteger.One;
        foreach (var child in children)
        {
            product *= sums[child];
        }

        return product;
    }

    private static BigInteger Sum(ReadOnlySpan<int> children, BigInteger[] sums)
    {
        var sum = BigInteger.Zero;
        foreach (var child in children)
        {
            sum += sums[child];
        }

        return sum;
    }
}
