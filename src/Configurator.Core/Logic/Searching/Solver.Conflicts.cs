namespace Configurator.Core.Logic.Searching;

/// <summary>What the search learns when it meets a contradiction.</summary>
internal sealed partial class Solver
{
    /// <summary>Learns a clause that would have prevented the conflict, and goes back to where it decides
    /// something.</summary>
    private void Learn(int conflict)
    {
        var learnt = new List<int> { 0 };
        var open = 0;
        var position = _trail.Count - 1;
        var clause = conflict;
        int literal;
        do
        {
            open += Mark(clause, learnt);
            while (!_seen[_trail[position] >> 1])
            {
                position--;
            }

            literal = _trail[position--];
            _seen[literal >> 1] = false;
            clause = _reason[literal >> 1];
        } while (--open > 0);

        learnt[0] = literal ^ 1;
        BackJump(learnt);
        _bump *= Decay;
    }

    /// <summary>Marks the clause's literals; those of earlier levels join the learnt clause, the others are
    /// counted.</summary>
    private int Mark(int clause, List<int> learnt)
    {
        var open = 0;
        foreach (var literal in _clauses[clause])
        {
            var variable = literal >> 1;
            if (_seen[variable] || ValueOf(literal) >= 0 || _level[variable] == 0)
            {
                continue;
            }

            _seen[variable] = true;
            Raise(variable);
            if (_level[variable] == _levels.Count)
            {
                open++;
            }
            else
            {
                learnt.Add(literal);
            }
        }

        return open;
    }

    private void BackJump(List<int> learnt)
    {
        foreach (var literal in learnt.Skip(1))
        {
            _seen[literal >> 1] = false;
        }

        if (learnt.Count == 1)
        {
            Backtrack(0);
            Assign(learnt[0], reason: -1);
            return;
        }

        var second = Enumerable.Range(1, learnt.Count - 1).MaxBy(i => _level[learnt[i] >> 1]);
        (learnt[1], learnt[second]) = (learnt[second], learnt[1]);
        Backtrack(_level[learnt[1] >> 1]);
        Assign(learnt[0], Watch([.. learnt]));
    }

    private void Raise(int variable)
    {
        _activity[variable] += _bump;
        if (_activity[variable] > ActivityMax)
        {
            for (var i = 0; i < _activity.Count; i++)
            {
                _activity[i] /= ActivityMax;
            }

            _bump /= ActivityMax;
        }

        _queue.Raised(variable);
    }

    /// <summary>The assumptions that made the given one false, and itself.</summary>
    private List<int> Conflict(int assumption)
    {
        var core = new List<int> { assumption };
        if (_level[assumption >> 1] == 0)
        {
            return core;
        }

        _seen[assumption >> 1] = true;
        for (var i = _trail.Count - 1; i >= _levels[0]; i--)
        {
            var literal = _trail[i];
            if (!_seen[literal >> 1])
            {
                continue;
            }

            _seen[literal >> 1] = false;
            if (_reason[literal >> 1] is var reason and >= 0)
            {
                foreach (var cause in _clauses[reason].Where(cause => cause != literal && _level[cause >> 1] > 0))
                {
                    _seen[cause >> 1] = true;
                }
            }
            else
            {
                core.Add(literal);
            }
        }

        return [.. core.Distinct()];
    }
}
