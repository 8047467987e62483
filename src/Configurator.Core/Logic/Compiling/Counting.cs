using System.Numerics;

namespace Configurator.Core.Logic.Compiling;

/// <summary>Exact numbers of satisfying assignments.</summary>
internal static class Counting
{
    public static BigInteger Count(Diagram diagram) =>
        diagram.IsEmpty ? BigInteger.Zero : PerNode(diagram, within: null)[^1];

    /// <param name="within">Values allowed to each variable; all of them where null.</param>
    public static BigInteger Count(Diagram diagram, ulong[] within) =>
        diagram.IsEmpty ? BigInteger.Zero : PerNode(diagram, within)[^1];

    /// <summary>The number of assignments of each node's variables.</summary>
    public static BigInteger[] PerNode(Diagram diagram, ulong[]? within)
    {
        var count = new BigInteger[diagram.NodeCount];
        for (var node = 0; node < count.Length; node++)
        {
            count[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => BitOperations.PopCount(
                    diagram.Values[node] & (within?[diagram.Variable[node]] ?? ulong.MaxValue)
                ),
                NodeKind.All => Product(diagram.ChildrenOf(node), count),
                _ => Sum(diagram.ChildrenOf(node), count),
            };
        }

        return count;
    }

    private static BigInteger Product(ReadOnlySpan<int> children, BigInteger[] count)
    {
        var product = BigInteger.One;
        foreach (var child in children)
        {
            if (!count[child].IsOne)
            {
                product *= count[child];
            }
        }

        return product;
    }

    private static BigInteger Sum(ReadOnlySpan<int> children, BigInteger[] count)
    {
        var sum = BigInteger.Zero;
        foreach (var child in children)
        {
            sum += count[child];
        }

        return sum;
    }
}
