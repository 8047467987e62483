using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>
/// Ranks variables by when min-fill elimination removes them: the last ones separate the formula into parts, and are
/// decided first.
/// </summary>
internal sealed class EliminationOrder
{
    /// <summary>Beyond so many neighbours the fill is taken for what it would be at most.</summary>
    private const int ExactDegreeMax = 48;

    private readonly HashSet<int>?[] _neighbours;
    private readonly PriorityQueue<int, (long Fill, int Degree, int Variable)> _queue = new();

    private EliminationOrder(int variables, List<Literal[]> clauses)
    {
        _neighbours = new HashSet<int>?[variables];
        foreach (var clause in clauses)
        {
            foreach (var literal in clause)
            {
                var neighbours = _neighbours[literal.Variable] ??= [];
                neighbours.UnionWith(clause.Select(other => other.Variable));
                neighbours.Remove(literal.Variable);
            }
        }
    }

    /// <summary>The rank of each variable; 0 for those in no clause.</summary>
    public static int[] RankOf(int variables, List<Literal[]> clauses)
    {
        var order = new EliminationOrder(variables, clauses);
        var rank = new int[variables];
        for (var variable = 0; variable < variables; variable++)
        {
            order.Enqueue(variable);
        }

        var next = 1;
        while (order._queue.TryDequeue(out var variable, out var cost))
        {
            if (order._neighbours[variable] is null)
            {
                continue;
            }

            if (order.CostOf(variable) is var present && present.CompareTo(cost) > 0)
            {
                order._queue.Enqueue(variable, present);
                continue;
            }

            order.Eliminate(variable);
            rank[variable] = next++;
        }

        return rank;
    }

    private void Eliminate(int variable)
    {
        var neighbours = _neighbours[variable]!.Order().ToArray();
        _neighbours[variable] = null;
        foreach (var neighbour in neighbours)
        {
            _neighbours[neighbour]!.Remove(variable);
            _neighbours[neighbour]!.UnionWith(neighbours);
            _neighbours[neighbour]!.Remove(neighbour);
        }

        foreach (var neighbour in neighbours)
        {
            Enqueue(neighbour);
        }
    }

    private void Enqueue(int variable)
    {
        if (_neighbours[variable] is not null)
        {
            _queue.Enqueue(variable, CostOf(variable));
        }
    }

    private (long Fill, int Degree, int Variable) CostOf(int variable)
    {
        var neighbours = _neighbours[variable]!;
        var degree = neighbours.Count;
        if (degree > ExactDegreeMax)
        {
            return ((long)degree * (degree - 1) / 2, degree, variable);
        }

        var among = neighbours.ToArray();
        long fill = 0;
        for (var i = 0; i < among.Length; i++)
        {
            for (var j = i + 1; j < among.Length; j++)
            {
                fill += _neighbours[among[i]]!.Contains(among[j]) ? 0 : 1;
            }
        }

        return (fill, degree, variable);
    }
}
