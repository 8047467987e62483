using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The heaviest satisfying assignment with each value of each variable: one pass up, one down.</summary>
internal static class ValueMargins
{
    /// <summary>By variable and value; <see cref="Optimum.None"/> where no satisfying assignment has it.</summary>
    public static long[][] Of(Diagram diagram, ulong[] within, ValueWeights weights)
    {
        var margins = diagram.Sizes.Select(size => Enumerable.Repeat(Optimum.None, size).ToArray()).ToArray();
        if (diagram.IsEmpty || Optimum.PerNode(diagram, within, weights) is not { } up || up[^1] == Optimum.None)
        {
            return margins;
        }

        var around = Around(diagram, up, weights.Fixed);
        for (var leaf = 0; leaf < diagram.LeafCount; leaf++)
        {
            var variable = diagram.Variable[leaf];
            var values = around[leaf] == Optimum.None ? 0 : diagram.Values[leaf] & within[variable];
            for (; values != 0; values &= values - 1)
            {
                var value = BitOperations.TrailingZeroCount(values);
                ref var margin = ref margins[variable][value];
                margin = Math.Max(margin, around[leaf] + weights.Of(variable, value));
            }
        }

        return margins;
    }

    /// <summary>The heaviest that all else can be around each node; none where no satisfying assignment passes
    /// it.</summary>
    private static long[] Around(Diagram diagram, long[] up, long fixedPart)
    {
        var around = new long[diagram.NodeCount];
        Array.Fill(around, Optimum.None);
        around[^1] = fixedPart;
        for (var node = diagram.Root; node >= diagram.LeafCount; node--)
        {
            if (around[node] == Optimum.None || up[node] == Optimum.None)
            {
                continue;
            }

            foreach (var child in diagram.ChildrenOf(node))
            {
                if (up[child] != Optimum.None)
                {
                    var others = diagram.Kinds[node] == NodeKind.All ? up[node] - up[child] : 0;
                    around[child] = Math.Max(around[child], around[node] + others);
                }
            }
        }

        return around;
    }
}
