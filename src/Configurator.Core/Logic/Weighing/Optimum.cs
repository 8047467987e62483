using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The heaviest satisfying assignment by one max-plus pass up the diagram and one way down.</summary>
internal static class Optimum
{
    /// <summary>Stands for the weight of what nothing satisfies.</summary>
    public const long None = long.MinValue;

    /// <summary>Null where nothing satisfies. Of several equally heavy ones, always the same.</summary>
    /// <param name="within">Values allowed to each variable.</param>
    public static (long Weight, int[] Values)? Heaviest(Diagram diagram, ulong[] within, ValueWeights weights)
    {
        if (diagram.IsEmpty || PerNode(diagram, within, weights) is not { } heaviest || heaviest[^1] == None)
        {
            return null;
        }

        return (heaviest[^1] + weights.Fixed, Witness(diagram, within, weights, heaviest));
    }

    /// <summary>The weight of the heaviest assignment of each node's variables, without the fixed part.</summary>
    public static long[] PerNode(Diagram diagram, ulong[] within, ValueWeights weights)
    {
        var heaviest = new long[diagram.NodeCount];
        for (var leaf = 0; leaf < diagram.LeafCount; leaf++)
        {
            var variable = diagram.Variable[leaf];
            heaviest[leaf] = weights.Heaviest(variable, diagram.Values[leaf] & within[variable]);
        }

        for (var node = diagram.LeafCount; node < heaviest.Length; node++)
        {
            var children = diagram.ChildrenOf(node);
            heaviest[node] = diagram.Kinds[node] == NodeKind.All ? Sum(children, heaviest) : Most(children, heaviest);
        }

        return heaviest;
    }

    private static long Sum(ReadOnlySpan<int> children, long[] heaviest)
    {
        var sum = 0L;
        foreach (var child in children)
        {
            if (heaviest[child] == None)
            {
                return None;
            }

            sum += heaviest[child];
        }

        return sum;
    }

    private static long Most(ReadOnlySpan<int> children, long[] heaviest)
    {
        var most = None;
        foreach (var child in children)
        {
            most = Math.Max(most, heaviest[child]);
        }

        return most;
    }

    private static int[] Witness(Diagram diagram, ulong[] within, ValueWeights weights, long[] heaviest)
    {
        var values = new int[diagram.Sizes.Length];
        var open = new Stack<int>([diagram.Root]);
        while (open.TryPop(out var node))
        {
            switch (diagram.Kinds[node])
            {
                case NodeKind.Leaf:
                    var variable = diagram.Variable[node];
                    values[variable] = Value(weights, variable, diagram.Values[node] & within[variable]);
                    break;
                case NodeKind.All:
                    foreach (var child in diagram.ChildrenOf(node))
                    {
                        open.Push(child);
                    }

                    break;
                default:
                    open.Push(First(diagram.ChildrenOf(node), heaviest, heaviest[node]));
                    break;
            }
        }

        return values;
    }

    private static int First(ReadOnlySpan<int> children, long[] heaviest, long weight)
    {
        foreach (var child in children)
        {
            if (heaviest[child] == weight)
            {
                return child;
            }
        }

        throw new InvalidOperationException("no child is as heavy as its parent");
    }

    /// <summary>The first of the heaviest values.</summary>
    private static int Value(ValueWeights weights, int variable, ulong values)
    {
        var most = weights.Heaviest(variable, values);
        while (weights.Of(variable, BitOperations.TrailingZeroCount(values)) != most)
        {
            values &= values - 1;
        }

        return BitOperations.TrailingZeroCount(values);
    }
}
