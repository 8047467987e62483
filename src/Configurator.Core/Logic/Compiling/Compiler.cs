using System.Numerics;

namespace Configurator.Core.Logic.Compiling;

/// <summary>How far a compilation may go. Counted, not timed, so that it ends the same on every machine.</summary>
/// <param name="Work">Literals visited; a million take about a hundredth of a second.</param>
internal sealed record CompileLimits(int Nodes, int Edges, long Work)
{
    public static CompileLimits Usual { get; } = new(200_000, 1_000_000, 600_000_000);

    public static CompileLimits None { get; } = new(int.MaxValue, int.MaxValue, long.MaxValue);
}

/// <summary>
/// Compiles clauses to a decision-DNNF, top down: decide a variable, propagate, fall apart into components that share
/// no
/// variable, compile each once. Components are remembered by all that they consist of, never by a hash alone.
/// </summary>
internal sealed class Compiler
{
    /// <summary>So many variables are decided one after the other on any stack.</summary>
    private const int ShallowMax = 200;

    private readonly ClauseStore _store;
    private readonly int[] _rank;
    private readonly CompileLimits _limits;
    private readonly DiagramBuilder _builder;
    private readonly Dictionary<ComponentKey, int> _known = [];
    private readonly ComponentFinder _finder;

    private Compiler(ClauseStore store, int[] rank, DiagramBuilder builder, CompileLimits limits)
    {
        (_store, _rank, _builder, _limits) = (store, rank, builder, limits);
        _finder = new(store);
    }

    /// <summary>The node for all of the store's clauses over the given variables; null beyond the limits.</summary>
    /// <param name="rank">Variables of higher rank are decided first.</param>
    public static int? Compile(
        ClauseStore store,
        int[] rank,
        DiagramBuilder builder,
        IReadOnlyList<int> variables,
        CompileLimits limits
    )
    {
        var compiler = new Compiler(store, rank, builder, limits);
        int[] all = [.. variables];
        return all.Length <= ShallowMax ? compiler.Whole(all) : OnDeepStack(() => compiler.Whole(all));
    }

    /// <summary>Recursion goes as deep as decisions follow each other, perhaps more than a usual stack holds.</summary>
    private static int? OnDeepStack(Func<int?> compile)
    {
        const int StackBytes = 1 << 30;
        int? root = null;
        var thread = new Thread(() => root = compile(), StackBytes);
        thread.Start();
        thread.Join();
        return root;
    }

    private int? Whole(int[] variables)
    {
        try
        {
            return Conjunction(new(variables, [.. Enumerable.Range(0, _store.ClauseCount)]));
        }
        catch (BeyondLimitsException)
        {
            return null;
        }
    }

    /// <summary>All that is left under the present domains: leaves for variables that no clause binds, a node a
    /// component.</summary>
    private int Conjunction(Component left)
    {
        var children = new List<int>();
        void Leaf(int variable) => children.Add(_builder.Leaf(variable, _store.Domain(variable)));
        foreach (var component in _finder.Split(left, Leaf))
        {
            var node = Node(component);
            if (node == DiagramBuilder.None)
            {
                return DiagramBuilder.None;
            }

            children.Add(node);
        }

        return _builder.All(children);
    }

    private int Node(Component component)
    {
        var key = ComponentKey.Of(component, _store);
        if (_known.TryGetValue(key, out var known))
        {
            return known;
        }

        if (_builder.NodeCount > _limits.Nodes || _builder.EdgeCount > _limits.Edges || _store.Work > _limits.Work)
        {
            throw new BeyondLimitsException();
        }

        var node = Decide(component);
        _known.Add(key, node);
        return node;
    }

    private int Decide(Component component)
    {
        var variable = component.Variables.MaxBy(candidate => _rank[candidate]);
        var branches = new List<int>();
        foreach (var values in Alike(variable, component))
        {
            var trail = _store.TrailLength;
            if (
                _store.Assume(new(variable, values)) && Conjunction(component) is var branch and not DiagramBuilder.None
            )
            {
                branches.Add(branch);
            }

            _store.Undo(trail);
        }

        return _builder.One(branches);
    }

    /// <summary>Groups of values that the component's clauses cannot tell apart.</summary>
    private List<ulong> Alike(int variable, Component component)
    {
        var groups = new List<ulong> { _store.Domain(variable) };
        if (BitOperations.PopCount(groups[0]) <= 2)
        {
            var low = groups[0] & (~groups[0] + 1);
            return [groups[0] & ~low, low];
        }

        foreach (var clause in component.Clauses)
        {
            for (var i = 0; i < _store.Length(clause); i++)
            {
                var literal = _store.LiteralAt(clause, i);
                if (literal.Variable == variable)
                {
                    groups =
                    [
                        .. groups
                            .SelectMany(group => new[] { group & literal.Values, group & ~literal.Values })
                            .Where(group => group != 0),
                    ];
                }
            }
        }

        return groups;
    }

    private sealed class BeyondLimitsException : Exception;
}
