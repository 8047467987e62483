using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>From a formula to its diagram: simplify, rank, compile, and put back what was simplified away.</summary>
internal static class DiagramCompiler
{
    /// <summary>The diagram over all variables of the formula, empty where nothing satisfies it; null beyond the
    /// limits.</summary>
    public static Diagram? Compile(Formula formula, CompileLimits limits)
    {
        int[] sizes = [.. formula.Sizes];
        if (
            Simplifier.Simplify(formula) is not { } simple
            || ClauseStore.Create([.. simple.Domains], simple.Clauses) is not { } store
        )
        {
            return new(sizes, [], [0], [], [], []);
        }

        var builder = new DiagramBuilder();
        var variables = Enumerable
            .Range(0, sizes.Length)
            .Where(variable => !simple.Twins.ContainsKey(variable))
            .ToList();
        var rank = EliminationOrder.RankOf(sizes.Length, simple.Clauses);
        return Compiler.Compile(store, rank, builder, variables, limits) is not { } root ? null
            : root == DiagramBuilder.None ? new(sizes, [], [0], [], [], [])
            : WithTwins(builder.Finish(root, sizes), simple.Twins);
    }

    /// <summary>Each leaf of a variable that has twins becomes all of their leaves.</summary>
    private static Diagram WithTwins(Diagram diagram, IReadOnlyDictionary<int, Twin> twins)
    {
        if (twins.Count == 0)
        {
            return diagram;
        }

        var byRoot = twins
            .Keys.Order()
            .Select(variable => (Variable: variable, Root: RootOf(variable, twins)))
            .ToLookup(pair => pair.Root.Of);
        var builder = new DiagramBuilder();
        var number = new int[diagram.NodeCount];
        for (var node = 0; node < diagram.NodeCount; node++)
        {
            List<int> children = [.. diagram.ChildrenOf(node).ToArray().Select(child => number[child])];
            number[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => LeafWithTwins(builder, diagram.Variable[node], diagram.Values[node], byRoot),
                NodeKind.All => builder.All(children),
                _ => builder.One(children),
            };
        }

        return builder.Finish(number[^1], diagram.Sizes);
    }

    private static int LeafWithTwins(
        DiagramBuilder builder,
        int variable,
        ulong values,
        ILookup<int, (int Variable, Twin Root)> twins
    )
    {
        if (!twins.Contains(variable))
        {
            return builder.Leaf(variable, values);
        }

        // Both values left: either one, and each twin with it.
        ulong[] each = values == 0b11 ? [0b01, 0b10] : [values];
        return builder.One([
            .. each.Select(value =>
                builder.All([
                    builder.Leaf(variable, value),
                    .. twins[variable]
                        .Select(twin => builder.Leaf(twin.Variable, twin.Root.IsOpposite ? value ^ 0b11 : value)),
                ])
            ),
        ]);
    }

    private static Twin RootOf(int variable, IReadOnlyDictionary<int, Twin> twins)
    {
        var root = new Twin(variable, IsOpposite: false);
        while (twins.TryGetValue(root.Of, out var next))
        {
            root = new(next.Of, root.IsOpposite ^ next.IsOpposite);
        }

        return root;
    }
}
