namespace Configurator.Core.Logic.Searching;

/// <summary>
/// A satisfiability search that learns clauses from its conflicts (CDCL: two watched literals, first unique implication
/// point, activities, phase saving, Luby restarts). Literals are 2v for true and 2v+1 for false. Deterministic.
/// </summary>
/// <remarks>Source: Eén and Sörensson, An Extensible SAT-solver, SAT 2003, for the shape of the algorithm.</remarks>
internal sealed partial class Solver
{
    private const int RestartUnit = 64;
    private const double Decay = 1 / 0.95;
    private const double ActivityMax = 1e100;

    private readonly List<int[]> _clauses = [];
    private readonly List<List<int>> _watching = [];
    private readonly List<sbyte> _value = [];
    private readonly List<bool> _phase = [];
    private readonly List<int> _level = [];
    private readonly List<int> _reason = [];
    private readonly List<double> _activity = [];
    private readonly List<bool> _seen = [];
    private readonly List<int> _trail = [];
    private readonly List<int> _levels = [];
    private readonly ActivityQueue _queue;
    private double _bump = 1;
    private int _head;
    private bool _isBroken;

    public Solver() => _queue = new(_activity);

    public int VariableCount => _value.Count;

    /// <summary>After an unsatisfiable call: assumptions that cannot hold together with the clauses.</summary>
    public IReadOnlyList<int> Core { get; private set; } = [];

    /// <summary>Conflicts met so far: a measure of work that is the same on every machine.</summary>
    public long Conflicts { get; private set; }

    /// <summary>Clauses looked at and assumptions made so far, and what callers have added for work of their
    /// own.</summary>
    public long Work { get; private set; }

    /// <summary>Beyond so much work a search ends in <see cref="TooEntangledException"/>.</summary>
    public long WorkMax { get; set; } = long.MaxValue;

    /// <summary>Counts work that is done on the search's behalf.</summary>
    /// <exception cref="TooEntangledException">It is more than is allowed.</exception>
    public void Spend(long work)
    {
        Work += work;
        if (Work > WorkMax)
        {
            Backtrack(0);
            throw new TooEntangledException();
        }
    }

    public int NewVariable()
    {
        _value.Add(0);
        _phase.Add(false);
        _level.Add(0);
        _reason.Add(-1);
        _activity.Add(0);
        _seen.Add(false);
        _watching.Add([]);
        _watching.Add([]);
        _queue.Add(_value.Count - 1);
        return _value.Count - 1;
    }

    public void Add(params ReadOnlySpan<int> literals)
    {
        Backtrack(0);
        var kept = new List<int>();
        foreach (var literal in literals)
        {
            if (ValueOf(literal) > 0 || kept.Contains(literal ^ 1))
            {
                return;
            }

            if (ValueOf(literal) == 0 && !kept.Contains(literal))
            {
                kept.Add(literal);
            }
        }

        Attach(kept);
    }

    /// <summary>Value of a variable in the assignment found last.</summary>
    public bool IsTrue(int variable) => _phase[variable];

    /// <summary>Can the clauses hold with all the assumptions? Then <see cref="IsTrue"/> tells how, else <see
    /// cref="Core"/> why not.</summary>
    public bool Solve(params ReadOnlySpan<int> assumptions) => Solve(long.MaxValue, assumptions)!.Value;

    /// <summary>The same; null where that many conflicts did not settle it.</summary>
    public bool? Solve(long conflictsMax, params ReadOnlySpan<int> assumptions)
    {
        int[] assumed = [.. assumptions];
        Core = [];
        var start = Conflicts;
        for (var run = 1; Conflicts - start < conflictsMax; run++)
        {
            if (Run(assumed, RestartUnit * Luby(run)) is { } answer)
            {
                Backtrack(0);
                return answer;
            }
        }

        return null;
    }

    private void Attach(List<int> literals)
    {
        if (literals.Count == 0)
        {
            _isBroken = true;
        }
        else if (literals.Count == 1)
        {
            Assign(literals[0], reason: -1);
            _isBroken |= Propagate() >= 0;
        }
        else
        {
            Watch([.. literals]);
        }
    }

    private int Watch(int[] clause)
    {
        _clauses.Add(clause);
        _watching[clause[0]].Add(_clauses.Count - 1);
        _watching[clause[1]].Add(_clauses.Count - 1);
        return _clauses.Count - 1;
    }

    /// <summary>Searches until an answer, or null after so many conflicts.</summary>
    private bool? Run(int[] assumptions, long conflictsMax)
    {
        for (var met = 0L; !_isBroken; )
        {
            Spend(1);
            var conflict = Propagate();
            if (conflict >= 0)
            {
                Conflicts++;
                if (_levels.Count == 0)
                {
                    _isBroken = true;
                }
                else if (++met > conflictsMax)
                {
                    Backtrack(0);
                    return null;
                }
                else
                {
                    Learn(conflict);
                }
            }
            else if (Decide(assumptions) is { } answer)
            {
                return answer;
            }
        }

        return false;
    }

    /// <summary>Assumes the next assumption or guesses a variable; an answer when there is nothing left to
    /// do.</summary>
    private bool? Decide(int[] assumptions)
    {
        while (_levels.Count < assumptions.Length)
        {
            Work++;
            var assumption = assumptions[_levels.Count];
            if (ValueOf(assumption) < 0)
            {
                Core = Conflict(assumption);
                return false;
            }

            _levels.Add(_trail.Count);
            if (ValueOf(assumption) == 0)
            {
                Assign(assumption, reason: -1);
                return null;
            }
        }

        var variable = _queue.Next(candidate => _value[candidate] == 0);
        if (variable < 0)
        {
            return true;
        }

        _levels.Add(_trail.Count);
        Assign((variable * 2) + (_phase[variable] ? 0 : 1), reason: -1);
        return null;
    }

    private int ValueOf(int literal) => (literal & 1) == 0 ? _value[literal >> 1] : -_value[literal >> 1];

    private void Assign(int literal, int reason)
    {
        var variable = literal >> 1;
        _value[variable] = (sbyte)((literal & 1) == 0 ? 1 : -1);
        _phase[variable] = (literal & 1) == 0;
        _level[variable] = _levels.Count;
        _reason[variable] = reason;
        _trail.Add(literal);
    }

    private void Backtrack(int level)
    {
        if (_levels.Count <= level)
        {
            return;
        }

        for (var i = _trail.Count - 1; i >= _levels[level]; i--)
        {
            _value[_trail[i] >> 1] = 0;
            _queue.Add(_trail[i] >> 1);
        }

        _trail.RemoveRange(_levels[level], _trail.Count - _levels[level]);
        _levels.RemoveRange(level, _levels.Count - level);
        _head = _trail.Count;
    }

    /// <summary>The clause that cannot hold any more; -1 where there is none.</summary>
    private int Propagate()
    {
        while (_head < _trail.Count)
        {
            var conflict = Visit(_trail[_head++] ^ 1);
            if (conflict >= 0)
            {
                return conflict;
            }
        }

        return -1;
    }

    private int Visit(int falseLiteral)
    {
        var list = _watching[falseLiteral];
        Work += list.Count;
        var kept = 0;
        var conflict = -1;
        for (var i = 0; i < list.Count; i++)
        {
            var clause = list[i];
            if (conflict >= 0 || !Moves(clause, falseLiteral))
            {
                list[kept++] = clause;
                if (conflict < 0 && !Holds(clause))
                {
                    conflict = clause;
                }
            }
        }

        list.RemoveRange(kept, list.Count - kept);
        return conflict;
    }

    /// <summary>Puts the false literal second and finds another one to watch in its place.</summary>
    private bool Moves(int index, int falseLiteral)
    {
        var clause = _clauses[index];
        if (clause[0] == falseLiteral)
        {
            (clause[0], clause[1]) = (clause[1], clause[0]);
        }

        if (ValueOf(clause[0]) > 0)
        {
            return false;
        }

        for (var i = 2; i < clause.Length; i++)
        {
            if (ValueOf(clause[i]) >= 0)
            {
                (clause[1], clause[i]) = (clause[i], clause[1]);
                _watching[clause[1]].Add(index);
                return true;
            }
        }

        return false;
    }

    /// <summary>All but the first literal are false: the first must be true.</summary>
    private bool Holds(int index)
    {
        var first = _clauses[index][0];
        if (ValueOf(first) == 0)
        {
            Assign(first, index);
        }

        return ValueOf(first) > 0;
    }

    /// <summary>1 1 2 1 1 2 4 1 ... (Luby, Sinclair and Zuckerman 1993).</summary>
    private static long Luby(int index)
    {
        var size = 1L;
        while (size < index + 1L)
        {
            size *= 2;
        }

        return size == index + 1L ? size / 2 : Luby((int)(index - (size / 2) + 1));
    }
}
