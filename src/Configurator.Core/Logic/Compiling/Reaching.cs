namespace Configurator.Core.Logic.Compiling;

/// <summary>Which values each variable can still take in some satisfying assignment.</summary>
internal static class Reaching
{
    // What is known of a node: nothing satisfies it, something does, or something that satisfies the root does.
    private const byte Unsatisfiable = 0;
    private const byte Satisfiable = 1;
    private const byte Reached = 2;

    /// <summary>The possible values of each variable; all 0 where nothing satisfies. One pass up, one down.</summary>
    /// <param name="within">Values allowed to each variable.</param>
    public static ulong[] Possible(Diagram diagram, ulong[] within)
    {
        var possible = new ulong[diagram.Sizes.Length];
        if (diagram.IsEmpty || Upward(diagram, within) is not { } state || state[^1] == Unsatisfiable)
        {
            return possible;
        }

        Downward(diagram, state);
        for (var leaf = 0; leaf < diagram.LeafCount; leaf++)
        {
            var variable = diagram.Variable[leaf];
            possible[variable] |= state[leaf] == Reached ? diagram.Values[leaf] & within[variable] : 0;
        }

        return possible;
    }

    public static bool IsSatisfiable(Diagram diagram, ulong[] within) =>
        !diagram.IsEmpty && Upward(diagram, within)[^1] == Satisfiable;

    private static byte[] Upward(Diagram diagram, ulong[] within)
    {
        var state = new byte[diagram.NodeCount];
        for (var leaf = 0; leaf < diagram.LeafCount; leaf++)
        {
            state[leaf] = (diagram.Values[leaf] & within[diagram.Variable[leaf]]) != 0 ? Satisfiable : Unsatisfiable;
        }

        for (var node = diagram.LeafCount; node < state.Length; node++)
        {
            var children = diagram.ChildrenOf(node);
            state[node] = diagram.Kinds[node] == NodeKind.All ? All(children, state) : Any(children, state);
        }

        return state;
    }

    private static byte All(ReadOnlySpan<int> children, byte[] state)
    {
        foreach (var child in children)
        {
            if (state[child] == Unsatisfiable)
            {
                return Unsatisfiable;
            }
        }

        return Satisfiable;
    }

    private static byte Any(ReadOnlySpan<int> children, byte[] state)
    {
        foreach (var child in children)
        {
            if (state[child] != Unsatisfiable)
            {
                return Satisfiable;
            }
        }

        return Unsatisfiable;
    }

    /// <summary>Whatever is satisfiable below a node that is reached is reached.</summary>
    private static void Downward(Diagram diagram, byte[] state)
    {
        state[^1] = Reached;
        for (var node = diagram.Root; node >= diagram.LeafCount; node--)
        {
            if (state[node] != Reached)
            {
                continue;
            }

            foreach (var child in diagram.ChildrenOf(node))
            {
                if (state[child] != Unsatisfiable)
                {
                    state[child] = Reached;
                }
            }
        }
    }

    /// <summary>Variables with two values that are always true, and those that never are.</summary>
    public static (int Core, int Dead) CoreAndDead(Diagram diagram)
    {
        var possible = Possible(diagram, [.. diagram.Sizes.Select(Formulas.Formula.DomainOf)]);
        return (possible.Count(values => values == 0b10), possible.Count(values => values == 0b01));
    }
}
