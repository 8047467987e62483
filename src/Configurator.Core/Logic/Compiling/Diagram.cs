namespace Configurator.Core.Logic.Compiling;

/// <summary>What a node of a diagram is: a variable within some values, all of its children, or exactly one of
/// them.</summary>
internal enum NodeKind : byte
{
    Leaf,
    All,
    One,
}

/// <summary>
/// All assignments that satisfy a formula, as a decision-DNNF in flat arrays: leaves stand first and children before
/// their parents, the children of <see cref="NodeKind.All"/> share no variable, those of <see cref="NodeKind.One"/>
/// exclude each other and have the same variables. Every question is then one pass over the arrays.
/// </summary>
/// <param name="Sizes">Number of values of each variable.</param>
/// <param name="First">Where a node's children start; one entry more than there are nodes.</param>
/// <param name="Variable">Of leaves.</param>
/// <param name="Values">Of leaves: a set of values.</param>
internal sealed record Diagram(
    int[] Sizes,
    NodeKind[] Kinds,
    int[] First,
    int[] Children,
    int[] Variable,
    ulong[] Values
)
{
    public int NodeCount => Kinds.Length;

    public int LeafCount { get; } = Kinds.Count(kind => kind == NodeKind.Leaf);

    public int EdgeCount => Children.Length;

    /// <summary>The last node; a diagram without nodes has no satisfying assignment.</summary>
    public int Root => NodeCount - 1;

    public bool IsEmpty => NodeCount == 0;

    public ReadOnlySpan<int> ChildrenOf(int node) => Children.AsSpan(First[node], First[node + 1] - First[node]);
}
