using System.Collections;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>What must be true of the arrays of every diagram.</summary>
internal static class Shape
{
    /// <summary>
    /// Leaves stand first and children before parents; children share no variable under All and have the same ones
    /// under One; the root has all.
    /// </summary>
    public static void IsSound(Diagram diagram)
    {
        Assert.Equal(diagram.NodeCount + 1, diagram.First.Length);
        Assert.Equal(diagram.EdgeCount, diagram.First[^1]);
        Assert.All(diagram.Kinds[..diagram.LeafCount], kind => Assert.Equal(NodeKind.Leaf, kind));
        Assert.All(diagram.Kinds[diagram.LeafCount..], kind => Assert.NotEqual(NodeKind.Leaf, kind));
        var variables = new BitArray[diagram.NodeCount];
        for (var node = 0; node < diagram.NodeCount; node++)
        {
            var children = diagram.ChildrenOf(node).ToArray();
            Assert.All(children, child => Assert.InRange(child, 0, node - 1));
            variables[node] = Variables(diagram, node, [.. children.Select(child => variables[child])]);
        }

        Assert.True(diagram.IsEmpty || variables[^1].HasAllSet(), "a variable is missing");
    }

    private static BitArray Variables(Diagram diagram, int node, BitArray[] children)
    {
        var union = new BitArray(diagram.Sizes.Length);
        if (diagram.Kinds[node] == NodeKind.Leaf)
        {
            Assert.Empty(children);
            Assert.NotEqual(0UL, diagram.Values[node]);
            union[diagram.Variable[node]] = true;
        }

        foreach (var child in children)
        {
            var isSame = Equal(child, children[0]);
            Assert.True(diagram.Kinds[node] == NodeKind.One ? isSame : !Overlap(union, child), $"node {node}");
            union.Or(child);
        }

        return union;
    }

    private static bool Equal(BitArray left, BitArray right) => !new BitArray(left).Xor(right).HasAnySet();

    private static bool Overlap(BitArray left, BitArray right) => new BitArray(left).And(right).HasAnySet();
}
