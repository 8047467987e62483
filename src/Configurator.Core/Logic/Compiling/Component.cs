namespace Configurator.Core.Logic.Compiling;

/// <summary>Variables that are not fixed, bound together by clauses that are not yet satisfied; both in ascending
/// order.</summary>
internal sealed record Component(int[] Variables, int[] Clauses);

/// <summary>Splits what is left of a formula into parts that share no variable.</summary>
internal sealed class ComponentFinder(ClauseStore store)
{
    private readonly int[] _variableSeen = new int[store.VariableCount];
    private readonly int[] _clauseSeen = new int[store.ClauseCount];
    private readonly Stack<int> _open = new();
    private int _stamp;

    /// <param name="alone">Told each variable that is fixed or that no unsatisfied clause mentions.</param>
    public List<Component> Split(int[] variables, Action<int> alone)
    {
        _stamp++;
        var components = new List<Component>();
        foreach (var variable in variables)
        {
            if (store.IsFixed(variable))
            {
                alone(variable);
            }
            else if (_variableSeen[variable] != _stamp)
            {
                var component = Grow(variable);
                if (component.Clauses.Length == 0)
                {
                    alone(variable);
                }
                else
                {
                    components.Add(component);
                }
            }
        }

        return components;
    }

    private Component Grow(int seed)
    {
        var variables = new List<int>();
        var clauses = new List<int>();
        Open(seed);
        while (_open.TryPop(out var variable))
        {
            variables.Add(variable);
            foreach (var place in store.OccurrencesOf(variable))
            {
                // A clause in which none of the variable's values helps any more does not bind it.
                if (!store.IsFalseAt(place) && store.ClauseAt(place) is var clause && _clauseSeen[clause] != _stamp)
                {
                    _clauseSeen[clause] = _stamp;
                    if (!store.IsSatisfied(clause))
                    {
                        clauses.Add(clause);
                        OpenAll(clause);
                    }
                }
            }
        }

        variables.Sort();
        clauses.Sort();
        return new([.. variables], [.. clauses]);
    }

    private void OpenAll(int clause)
    {
        for (var i = 0; i < store.Length(clause); i++)
        {
            var literal = store.LiteralAt(clause, i);
            if (_variableSeen[literal.Variable] != _stamp && !store.IsFalse(literal))
            {
                Open(literal.Variable);
            }
        }
    }

    private void Open(int variable)
    {
        _variableSeen[variable] = _stamp;
        _open.Push(variable);
    }
}
