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

    /// <summary>Two variables of more neighbours than this are taken for neighbours of each other.</summary>
    private const int HubDegree = 1024;

    private readonly IntList?[] _neighbours;
    private readonly EliminationCost[] _cost;
    private readonly PriorityQueue<int, EliminationCost> _queue = new();
    private readonly int[] _marked;
    private int _mark;

    private EliminationOrder(int variables, List<Literal[]> clauses)
    {
        _neighbours = new IntList?[variables];
        _cost = new EliminationCost[variables];
        _marked = new int[variables];
        var occurrences = new IntList?[variables];
        for (var clause = 0; clause < clauses.Count; clause++)
        {
            foreach (var literal in clauses[clause])
            {
                (occurrences[literal.Variable] ??= new()).Add(clause);
            }
        }

        for (var variable = 0; variable < variables; variable++)
        {
            if (occurrences[variable] is { } places)
            {
                var neighbours = _neighbours[variable] = new();
                _marked[variable] = ++_mark;
                foreach (var clause in places.Items)
                {
                    AddUnmarked(neighbours, clauses[clause]);
                }
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
            if (order._neighbours[variable] is not null)
            {
                order.Enqueue(variable, order.Unknown(variable));
            }
        }

        for (var next = 1; order.Next() is var variable and >= 0; next++)
        {
            order.Eliminate(variable);
            rank[variable] = next;
        }

        return rank;
    }

    /// <summary>The variable that costs least; -1 at the end. Costs are worked out once they may be least.</summary>
    private int Next()
    {
        while (_queue.TryDequeue(out var variable, out var cost))
        {
            if (_neighbours[variable] is null || cost != _cost[variable])
            {
                continue;
            }

            if (cost.IsKnown)
            {
                return variable;
            }

            Enqueue(variable, CostOf(variable));
        }

        return -1;
    }

    private EliminationCost Unknown(int variable) => new(0, _neighbours[variable]!.Count, variable, IsKnown: false);

    private void Enqueue(int variable, EliminationCost cost)
    {
        _cost[variable] = cost;
        _queue.Enqueue(variable, cost);
    }

    private void AddUnmarked(IntList neighbours, Literal[] clause)
    {
        foreach (var literal in clause)
        {
            if (_marked[literal.Variable] != _mark)
            {
                _marked[literal.Variable] = _mark;
                neighbours.Add(literal.Variable);
            }
        }
    }

    private void Eliminate(int variable)
    {
        var neighbours = _neighbours[variable]!;
        _neighbours[variable] = null;
        foreach (var neighbour in neighbours.Items)
        {
            Join(neighbour, variable, neighbours.Items);
        }
    }

    /// <summary>Makes the variable a neighbour of all these, and no longer of the one that is eliminated.</summary>
    private void Join(int variable, int eliminated, ReadOnlySpan<int> others)
    {
        var neighbours = _neighbours[variable]!;
        _marked[variable] = ++_mark;
        var kept = 0;
        foreach (var neighbour in neighbours.Items)
        {
            if (neighbour != eliminated)
            {
                _marked[neighbour] = _mark;
                neighbours[kept++] = neighbour;
            }
        }

        neighbours.Truncate(kept);
        foreach (var other in others)
        {
            if (_marked[other] != _mark)
            {
                neighbours.Add(other);
            }
        }

        Enqueue(variable, Unknown(variable));
    }

    private EliminationCost CostOf(int variable)
    {
        var neighbours = _neighbours[variable]!.Items;
        var degree = neighbours.Length;
        if (degree > ExactDegreeMax)
        {
            return new((long)degree * (degree - 1) / 2, degree, variable, IsKnown: true);
        }

        _mark++;
        var hubs = 0L;
        foreach (var neighbour in neighbours)
        {
            _marked[neighbour] = _mark;
            hubs += IsHub(neighbour) ? 1 : 0;
        }

        var linked = hubs * (hubs - 1);
        foreach (var neighbour in neighbours)
        {
            linked += IsHub(neighbour) ? 0 : LinksToMarked(_neighbours[neighbour]!.Items);
        }

        return new((((long)degree * (degree - 1)) - linked) / 2, degree, variable, IsKnown: true);
    }

    private bool IsHub(int variable) => _neighbours[variable]!.Count > HubDegree;

    /// <summary>Hubs count twice, for their own lists are not searched.</summary>
    private long LinksToMarked(ReadOnlySpan<int> neighbours)
    {
        var links = 0L;
        foreach (var neighbour in neighbours)
        {
            links +=
                _marked[neighbour] != _mark ? 0
                : IsHub(neighbour) ? 2
                : 1;
        }

        return links;
    }
}
