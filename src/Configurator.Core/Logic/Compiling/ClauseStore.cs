using System.Numerics;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>
/// Clauses in flat arrays with two watched literals each, domains of the variables, and the trail by which every change
/// can be taken back. A literal is false when the variable's domain shares no value with it, true when it has no other.
/// </summary>
internal sealed partial class ClauseStore
{
    private readonly int[] _start;
    private readonly int[] _clauseOf;
    private readonly int[] _variable;
    private readonly ulong[] _values;
    private readonly int[][] _occurrences;
    private readonly IntList[] _watching;
    private readonly int[] _watchA;
    private readonly int[] _watchB;
    private readonly ulong[] _domain;
    private readonly bool[] _isBinary;
    private readonly Stack<(int Variable, ulong Before)> _trail = new();
    private readonly Queue<int> _changed = new();

    private ClauseStore(ulong[] domains, List<Literal[]> clauses)
    {
        _domain = domains;
        _isBinary = [.. domains.Select(domain => domain == 0b11)];
        var places = clauses.Sum(clause => clause.Length);
        _start = new int[clauses.Count + 1];
        (_clauseOf, _variable, _values) = (new int[places], new int[places], new ulong[places]);
        Flatten(clauses);
        _occurrences = Occurrences(domains.Length);
        _watching = [.. domains.Select(_ => new IntList())];
        _watchA = new int[ClauseCount];
        _watchB = new int[ClauseCount];
    }

    public int ClauseCount => _start.Length - 1;

    public int VariableCount => _domain.Length;

    /// <summary>Literals visited so far: a measure of work that is the same on every machine.</summary>
    public long Work { get; private set; }

    public int TrailLength => _trail.Count;

    /// <summary>Sets up and propagates what follows at once; null where the clauses cannot all hold.</summary>
    /// <param name="clauses">Each with at most one literal a variable, and none that is true or false in the
    /// domains.</param>
    public static ClauseStore? Create(ulong[] domains, List<Literal[]> clauses)
    {
        var store = new ClauseStore(domains, clauses);
        for (var clause = 0; clause < store.ClauseCount; clause++)
        {
            if (!store.Watch(clause))
            {
                return null;
            }
        }

        return store.Propagate() ? store : null;
    }

    /// <summary>Has it two values to begin with?</summary>
    public bool IsBinary(int variable) => _isBinary[variable];

    public ulong Domain(int variable) => _domain[variable];

    public bool IsFixed(int variable) => BitOperations.IsPow2(_domain[variable]);

    /// <summary>Places of the variable's literals, in the order of clauses.</summary>
    public ReadOnlySpan<int> OccurrencesOf(int variable) => _occurrences[variable];

    public int ClauseAt(int place) => _clauseOf[place];

    /// <summary>The literal at a place of <see cref="OccurrencesOf"/> cannot hold any more.</summary>
    public bool IsFalseAt(int place) => (_domain[_variable[place]] & _values[place]) == 0;

    public int Length(int clause) => _start[clause + 1] - _start[clause];

    public Literal LiteralAt(int clause, int index) =>
        new(_variable[_start[clause] + index], _values[_start[clause] + index]);

    public bool IsSatisfied(int clause)
    {
        for (var i = _start[clause]; i < _start[clause + 1]; i++)
        {
            Work++;
            if ((_domain[_variable[i]] & ~_values[i]) == 0)
            {
                return true;
            }
        }

        return false;
    }

    public bool IsFalse(Literal literal) => (_domain[literal.Variable] & literal.Values) == 0;

    /// <summary>Leaves the variable only those values and propagates; false on a contradiction. Undo afterwards either
    /// way.</summary>
    public bool Assume(Literal literal) => Restrict(literal.Variable, literal.Values) && Propagate();

    public void Undo(int trailLength)
    {
        _changed.Clear();
        while (_trail.Count > trailLength)
        {
            var (variable, before) = _trail.Pop();
            _domain[variable] = before;
        }
    }

    /// <summary>Adds the value of each variable that a change which can still be undone has fixed.</summary>
    public void AddFixed(ulong[] values)
    {
        foreach (var (variable, _) in _trail)
        {
            values[variable] |= IsFixed(variable) ? _domain[variable] : 0;
        }
    }

    /// <summary>Makes all changes so far final.</summary>
    public void Keep() => _trail.Clear();

    private void Flatten(List<Literal[]> clauses)
    {
        var place = 0;
        for (var clause = 0; clause < clauses.Count; clause++)
        {
            foreach (var literal in clauses[clause])
            {
                (_clauseOf[place], _variable[place], _values[place]) = (clause, literal.Variable, literal.Values);
                place++;
            }

            _start[clause + 1] = place;
        }
    }

    private int[][] Occurrences(int variables)
    {
        var counts = new int[variables];
        foreach (var variable in _variable)
        {
            counts[variable]++;
        }

        var occurrences = counts.Select(count => new int[count]).ToArray();
        for (var place = _variable.Length - 1; place >= 0; place--)
        {
            occurrences[_variable[place]][--counts[_variable[place]]] = place;
        }

        return occurrences;
    }
}
