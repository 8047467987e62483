namespace Configurator.Core.Logic.Compiling;

/// <summary>Watched literals: what follows when a variable loses values.</summary>
internal sealed partial class ClauseStore
{
    private bool Watch(int clause)
    {
        int from = _start[clause],
            to = _start[clause + 1];
        _watchA[clause] = from;
        _watchB[clause] = to - 1;
        if (to - from < 2)
        {
            return to > from && Restrict(_variable[from], _values[from]);
        }

        _watching[_variable[from]].Add(clause);
        _watching[_variable[to - 1]].Add(clause);
        return true;
    }

    private bool Restrict(int variable, ulong values)
    {
        var before = _domain[variable];
        var after = before & values;
        if (after == before)
        {
            return true;
        }

        _trail.Push((variable, before));
        _domain[variable] = after;
        _changed.Enqueue(variable);
        return after != 0;
    }

    private bool Propagate()
    {
        while (_changed.TryDequeue(out var variable))
        {
            if (!Visit(variable))
            {
                _changed.Clear();
                return false;
            }
        }

        return true;
    }

    private bool Visit(int variable)
    {
        var list = _watching[variable];
        var kept = 0;
        var holds = true;
        for (var i = 0; i < list.Count; i++)
        {
            var clause = list[i];
            var moved = holds && MovesOrHolds(clause, variable, out holds);
            if (!moved)
            {
                list[kept++] = clause;
            }
        }

        list.Truncate(kept);
        return holds;
    }

    /// <summary>True where the clause is now watched elsewhere; <paramref name="holds"/> is false on a
    /// contradiction.</summary>
    private bool MovesOrHolds(int clause, int variable, out bool holds)
    {
        Work++;
        holds = true;
        var isA = _variable[_watchA[clause]] == variable;
        var here = isA ? _watchA[clause] : _watchB[clause];
        var other = isA ? _watchB[clause] : _watchA[clause];
        if ((_domain[variable] & _values[here]) != 0 || (_domain[_variable[other]] & ~_values[other]) == 0)
        {
            return false;
        }

        if (Replacement(clause, here, other) is var next and >= 0)
        {
            (isA ? ref _watchA[clause] : ref _watchB[clause]) = next;
            _watching[_variable[next]].Add(clause);
            return true;
        }

        holds = Restrict(_variable[other], _values[other]);
        return false;
    }

    private int Replacement(int clause, int here, int other)
    {
        for (var i = _start[clause]; i < _start[clause + 1]; i++)
        {
            Work++;
            if (i != here && i != other && (_domain[_variable[i]] & _values[i]) != 0)
            {
                return i;
            }
        }

        return -1;
    }
}
