namespace Configurator.Core.Logic.Compiling;

/// <summary>Which values each variable can still take in some satisfying assignment.</summary>
internal static class Reaching
{
    /// <summary>The possible values of each variable; 0 everywhere where nothing satisfies. One pass up, one
    /// down.</summary>
    /// <param name="within">Values allowed to each variable.</param>
    public static ulong[] Possible(Diagram diagram, ulong[] within)
    {
        var possible = new ulong[diagram.Sizes.Length];
        if (diagram.IsEmpty)
        {
            return possible;
        }

        var satisfiable = Satisfiable(diagram, within);
        var reached = new bool[diagram.NodeCount];
        reached[^1] = satisfiable[^1];
        for (var node = diagram.Root; node >= 0; node--)
        {
            if (!reached[node])
            {
                continue;
            }

            if (diagram.Kinds[node] == NodeKind.Leaf)
            {
                possible[diagram.Variable[node]] |= diagram.Values[node] & within[diagram.Variable[node]];
            }

            foreach (var child in diagram.ChildrenOf(node))
            {
                reached[child] |= satisfiable[child];
            }
        }

        return possible;
    }

    public static bool IsSatisfiable(Diagram diagram, ulong[] within) =>
        !diagram.IsEmpty && Satisfiable(diagram, within)[^1];

    private static bool[] Satisfiable(Diagram diagram, ulong[] within)
    {
        var satisfiable = new bool[diagram.NodeCount];
        for (var node = 0; node < satisfiable.Length; node++)
        {
            satisfiable[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => (diagram.Values[node] & within[diagram.Variable[node]]) != 0,
                NodeKind.All => All(diagram.ChildrenOf(node), satisfiable),
                _ => Any(diagram.ChildrenOf(node), satisfiable),
            };
        }

        return satisfiable;
    }

    private static bool All(ReadOnlySpan<int> children, bool[] satisfiable)
    {
        foreach (var child in children)
        {
            if (!satisfiable[child])
            {
                return false;
            }
        }

        return true;
    }

    private static bool Any(ReadOnlySpan<int> children, bool[] satisfiable)
    {
        foreach (var child in children)
        {
            if (satisfiable[child])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Variables with two values that are always true, and those that never are.</summary>
    public static (int Core, int Dead) CoreAndDead(Diagram diagram)
    {
        var possible = Possible(diagram, [.. diagram.Sizes.Select(Formulas.Formula.DomainOf)]);
        return (possible.Count(values => values == 0b10), possible.Count(values => values == 0b01));
    }
}
