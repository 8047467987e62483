namespace Configurator.Core.Logic.Compiling;

/// <summary>Collects the nodes of a diagram; leaves and equal nodes are made once.</summary>
internal sealed class DiagramBuilder
{
    /// <summary>Stands for a node that no assignment satisfies.</summary>
    public const int None = -1;

    private readonly List<NodeKind> _kinds = [];
    private readonly List<int> _first = [0];
    private readonly List<int> _children = [];
    private readonly List<int> _variable = [];
    private readonly List<ulong> _values = [];
    private readonly Dictionary<(int, ulong), int> _leaves = [];

    public int NodeCount => _kinds.Count;

    public int EdgeCount => _children.Count;

    public int Leaf(int variable, ulong values)
    {
        if (!_leaves.TryGetValue((variable, values), out var leaf))
        {
            leaf = Add(NodeKind.Leaf, [], variable, values);
            _leaves.Add((variable, values), leaf);
        }

        return leaf;
    }

    public int All(List<int> children) => children.Count == 1 ? children[0] : Add(NodeKind.All, children, 0, 0);

    public int One(List<int> children) =>
        children.Count switch
        {
            0 => None,
            1 => children[0],
            _ => Add(NodeKind.One, children, 0, 0),
        };

    /// <summary>What the root needs and nothing else: leaves first, children before parents.</summary>
    public Diagram Finish(int root, int[] sizes)
    {
        var kept = InOrder(root);
        var number = new int[NodeCount];
        var first = new int[kept.Length + 1];
        var children = new List<int>(EdgeCount);
        for (var i = 0; i < kept.Length; i++)
        {
            number[kept[i]] = i;
            for (var edge = _first[kept[i]]; edge < _first[kept[i] + 1]; edge++)
            {
                children.Add(number[_children[edge]]);
            }

            first[i + 1] = children.Count;
        }

        return new(
            sizes,
            [.. kept.Select(node => _kinds[node])],
            first,
            [.. children],
            [.. kept.Select(node => _variable[node])],
            [.. kept.Select(node => _values[node])]
        );
    }

    /// <summary>
    /// The nodes under the root by their height, and nodes alike beside each other: so the processor mostly guesses
    /// right what comes next in a pass.
    /// </summary>
    private int[] InOrder(int root)
    {
        var isKept = Below(root);
        var height = new int[NodeCount];
        for (var node = 0; node <= root; node++)
        {
            for (var edge = _first[node]; edge < _first[node + 1]; edge++)
            {
                height[node] = Math.Max(height[node], height[_children[edge]] + 1);
            }
        }

        return
        [
            .. Enumerable
                .Range(0, root + 1)
                .Where(node => isKept[node])
                .OrderBy(node => height[node])
                .ThenBy(node => _kinds[node])
                .ThenBy(node => _first[node + 1] - _first[node]),
        ];
    }

    private int Add(NodeKind kind, List<int> children, int variable, ulong values)
    {
        _kinds.Add(kind);
        _children.AddRange(children);
        _first.Add(_children.Count);
        _variable.Add(variable);
        _values.Add(values);
        return _kinds.Count - 1;
    }

    /// <summary>The root and everything under it.</summary>
    private bool[] Below(int root)
    {
        var isBelow = new bool[NodeCount];
        isBelow[root] = true;
        for (var node = root; node >= 0; node--)
        {
            for (var edge = _first[node]; isBelow[node] && edge < _first[node + 1]; edge++)
            {
                isBelow[_children[edge]] = true;
            }
        }

        return isBelow;
    }
}
