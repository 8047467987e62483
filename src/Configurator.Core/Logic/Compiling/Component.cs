namespace Configurator.Core.Logic.Compiling;

/// <summary>Variables that are not fixed, bound together by clauses not yet satisfied; both ascending.</summary>
internal sealed record Component(int[] Variables, int[] Clauses);

/// <summary>Splits what is left of a formula into parts that share no variable.</summary>
internal sealed class ComponentFinder(ClauseStore store)
{
    // Which part a variable or clause belongs to; parts are numbered through over all calls.
    private readonly int[] _partOfVariable = new int[store.VariableCount];
    private readonly int[] _partOfClause = new int[store.ClauseCount];
    private readonly Stack<int> _open = new();
    private readonly List<(int Variables, int Clauses)> _sizes = [];
    private int _last;

    /// <param name="alone">Told each variable that is fixed or that no unsatisfied clause mentions.</param>
    public List<Component> Split(Component whole, Action<int> alone)
    {
        // What belongs to no part gets a number of its own, so as not to be looked at again.
        var none = ++_last;
        _sizes.Clear();
        foreach (var variable in whole.Variables)
        {
            if (store.IsFixed(variable))
            {
                _partOfVariable[variable] = none;
                alone(variable);
            }
            else if (_partOfVariable[variable] < none && !Grow(variable, none))
            {
                _partOfVariable[variable] = none;
                alone(variable);
            }
        }

        return Parts(whole, none);
    }

    /// <summary>A new part of all that the variable is bound to; false where that is nothing.</summary>
    private bool Grow(int seed, int none)
    {
        var (variables, clauses) = (0, 0);
        Open(seed, ++_last);
        while (_open.TryPop(out var variable))
        {
            variables++;
            foreach (var place in store.OccurrencesOf(variable))
            {
                // A clause in which none of the variable's values helps any more does not bind it.
                if (_partOfClause[store.ClauseAt(place)] < none && !store.IsFalseAt(place))
                {
                    clauses += Take(store.ClauseAt(place), none) ? 1 : 0;
                }
            }
        }

        if (clauses == 0)
        {
            _last--;
            return false;
        }

        _sizes.Add((variables, clauses));
        return true;
    }

    /// <summary>The clause and all that it binds join the part, unless it holds already.</summary>
    private bool Take(int clause, int none)
    {
        if (store.IsSatisfied(clause))
        {
            _partOfClause[clause] = none;
            return false;
        }

        _partOfClause[clause] = _last;
        for (var i = 0; i < store.Length(clause); i++)
        {
            var literal = store.LiteralAt(clause, i);
            if (_partOfVariable[literal.Variable] != _last && !store.IsFalse(literal))
            {
                Open(literal.Variable, _last);
            }
        }

        return true;
    }

    private void Open(int variable, int part)
    {
        _partOfVariable[variable] = part;
        _open.Push(variable);
    }

    private List<Component> Parts(Component whole, int none)
    {
        var parts = _sizes.ConvertAll(size => new Component(new int[size.Variables], new int[size.Clauses]));
        Share(whole.Variables, _partOfVariable, none, [.. parts.Select(part => part.Variables)]);
        Share(whole.Clauses, _partOfClause, none, [.. parts.Select(part => part.Clauses)]);
        return parts;
    }

    /// <summary>Each item goes to the part it belongs to; as they come in ascending order, they stay so.</summary>
    private static void Share(int[] items, int[] partOf, int none, int[][] parts)
    {
        var filled = new int[parts.Length];
        foreach (var item in items)
        {
            if (partOf[item] > none)
            {
                var part = partOf[item] - none - 1;
                parts[part][filled[part]++] = item;
            }
        }
    }
}
