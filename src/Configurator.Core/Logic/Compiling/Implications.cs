using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>
/// The graph of implications that two-literal clauses make between binary variables. Literals in one strongly connected
/// part are always equal (Tarjan, without recursion).
/// </summary>
internal sealed class Implications
{
    private readonly List<int>[] _next;
    private readonly int[] _order;
    private readonly int[] _low;
    private readonly bool[] _onStack;
    private readonly Stack<int> _stack = new();
    private readonly List<List<int>> _parts = [];
    private int _count;

    private Implications(ulong[] domains, List<Literal[]> clauses)
    {
        _next = [.. Enumerable.Range(0, domains.Length * 2).Select(_ => new List<int>(2))];
        _order = new int[_next.Length];
        _low = new int[_next.Length];
        _onStack = new bool[_next.Length];
        foreach (var clause in clauses)
        {
            if (clause.Length == 2 && domains[clause[0].Variable] == 0b11 && domains[clause[1].Variable] == 0b11)
            {
                _next[Code(clause[0]) ^ 1].Add(Code(clause[1]));
                _next[Code(clause[1]) ^ 1].Add(Code(clause[0]));
            }
        }
    }

    /// <summary>Each variable that equals one of a lower number or is its opposite.</summary>
    public static List<(int Variable, Twin Twin)> Twins(ulong[] domains, List<Literal[]> clauses)
    {
        var graph = new Implications(domains, clauses);
        for (var literal = 0; literal < graph._next.Length; literal++)
        {
            if (graph._order[literal] == 0 && graph._next[literal].Count > 0)
            {
                graph.Visit(literal);
            }
        }

        var twins = new SortedDictionary<int, Twin>();
        foreach (var part in graph._parts)
        {
            var first = part.Min();
            foreach (var literal in part.Where(literal => literal >> 1 != first >> 1))
            {
                twins.TryAdd(literal >> 1, new(first >> 1, ((literal ^ first) & 1) == 1));
            }
        }

        return [.. twins.Select(pair => (pair.Key, pair.Value))];
    }

    /// <summary>Even for true, odd for false.</summary>
    private static int Code(Literal literal) => (literal.Variable * 2) + (literal.Values == 0b10 ? 0 : 1);

    private void Visit(int start)
    {
        var open = new Stack<(int Literal, int Index)>();
        Enter(start);
        open.Push((start, 0));
        while (open.TryPop(out var at))
        {
            var (literal, index) = at;
            if (index > 0)
            {
                _low[literal] = Math.Min(_low[literal], _low[_next[literal][index - 1]]);
            }

            var child = Unseen(literal, ref index);
            if (child >= 0)
            {
                open.Push((literal, index));
                Enter(child);
                open.Push((child, 0));
            }
            else if (_low[literal] == _order[literal])
            {
                Close(literal);
            }
        }
    }

    /// <summary>The next successor not yet seen; meanwhile those on the stack lower this literal's mark. -1 at the
    /// end.</summary>
    private int Unseen(int literal, ref int index)
    {
        while (index < _next[literal].Count)
        {
            var child = _next[literal][index++];
            if (_order[child] == 0)
            {
                return child;
            }

            if (_onStack[child])
            {
                _low[literal] = Math.Min(_low[literal], _order[child]);
            }
        }

        return -1;
    }

    private void Enter(int literal)
    {
        _order[literal] = _low[literal] = ++_count;
        _onStack[literal] = true;
        _stack.Push(literal);
    }

    private void Close(int literal)
    {
        var part = new List<int>();
        int member;
        do
        {
            member = _stack.Pop();
            _onStack[member] = false;
            part.Add(member);
        } while (member != literal);

        if (part.Count > 1)
        {
            _parts.Add(part);
        }
    }
}
