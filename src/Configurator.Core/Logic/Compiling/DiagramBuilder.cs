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

    /// <summary>What the root needs and nothing else, children before parents.</summary>
    public Diagram Finish(int root, int[] sizes)
    {
        var number = Reached(root);
        var kept = Enumerable.Range(0, NodeCount).Where(node => number[node] >= 0).ToArray();
        var first = new int[kept.Length + 1];
        var children = new List<int>();
        for (var i = 0; i < kept.Length; i++)
        {
            children.AddRange(ChildrenOf(kept[i]).Select(child => number[child]));
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

    private int Add(NodeKind kind, List<int> children, int variable, ulong values)
    {
        _kinds.Add(kind);
        _children.AddRange(children);
        _first.Add(_children.Count);
        _variable.Add(variable);
        _values.Add(values);
        return _kinds.Count - 1;
    }

    private IEnumerable<int> ChildrenOf(int node) => _children.Skip(_first[node]).Take(_first[node + 1] - _first[node]);

    /// <summary>New numbers of the nodes below the root, in their old order; -1 for all others.</summary>
    private int[] Reached(int root)
    {
        var number = new int[NodeCount];
        Array.Fill(number, -1);
        if (root >= 0)
        {
            number[root] = 0;
            for (var node = root; node >= 0; node--)
            {
                for (var i = _first[node]; number[node] >= 0 && i < _first[node + 1]; i++)
                {
                    number[_children[i]] = 0;
                }
            }
        }

        var next = 0;
        for (var node = 0; node < number.Length; node++)
        {
            number[node] = number[node] < 0 ? -1 : next++;
        }

        return number;
    }
}
