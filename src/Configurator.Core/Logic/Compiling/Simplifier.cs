using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>A formula after preparation: equal solutions, fewer variables and clauses.</summary>
/// <param name="Domains">What is left to each variable.</param>
/// <param name="Clauses">Over variables that are not fixed and not a twin of another.</param>
/// <param name="Twins">Variables that always equal another one, or always differ from it.</param>
internal sealed record Simplified(ulong[] Domains, List<Literal[]> Clauses, IReadOnlyDictionary<int, Twin> Twins);

/// <param name="IsOpposite">It is true exactly when the other is false.</param>
internal readonly record struct Twin(int Of, bool IsOpposite);

/// <summary>Fixes what can only be one way, merges variables that are always equal, and drops clauses that say
/// nothing.</summary>
internal sealed class Simplifier
{
    private const int RoundsMax = 8;

    private readonly ulong[] _domains;
    private readonly Dictionary<int, Twin> _twins = [];
    private readonly bool[] _isTwin;
    private List<Literal[]> _clauses;

    private Simplifier(Formula formula)
    {
        _domains = [.. Enumerable.Range(0, formula.Sizes.Length).Select(formula.Domain)];
        _isTwin = new bool[_domains.Length];
        _clauses = [.. formula.Clauses.Select(clause => clause.Literals.ToArray())];
    }

    private Simplified Result => new(_domains, ImpliedClauses.LeftOutOf(_clauses), _twins);

    /// <summary>Null where the clauses cannot all hold.</summary>
    public static Simplified? Simplify(Formula formula)
    {
        var simplifier = new Simplifier(formula);
        for (var round = 0; round < RoundsMax; round++)
        {
            if (!simplifier.Fix(probe: round == 0))
            {
                return null;
            }

            if (!simplifier.Merge())
            {
                return simplifier.Result;
            }
        }

        return simplifier.Fix(probe: false) ? simplifier.Result : null;
    }

    /// <summary>Propagates, tries every value of every variable, and rewrites the clauses in what is left.</summary>
    private bool Fix(bool probe)
    {
        if (!Rewrite() || ClauseStore.Create([.. _domains], _clauses) is not { } store)
        {
            return false;
        }

        if (probe && !Probe(store))
        {
            return false;
        }

        var hasChanged = false;
        for (var variable = 0; variable < _domains.Length; variable++)
        {
            hasChanged |= _domains[variable] != store.Domain(variable);
            _domains[variable] = store.Domain(variable);
        }

        return !hasChanged || Rewrite();
    }

    /// <summary>
    /// A value that leads to a contradiction is struck out. One that followed from another value, which did not, need
    /// not be tried; so variables are tried in descending order, as what depends on others is mostly defined later.
    /// </summary>
    private static bool Probe(ClauseStore store)
    {
        store.Keep();
        var followed = new ulong[store.VariableCount];
        for (var variable = store.VariableCount - 1; variable >= 0; variable--)
        {
            var left = store.Domain(variable) & ~followed[variable];
            for (; left != 0 && !store.IsFixed(variable); left &= left - 1)
            {
                var value = left & (~left + 1);
                var fits = store.Assume(new(variable, value));
                if (fits)
                {
                    store.AddFixed(followed);
                }

                store.Undo(0);
                if (!fits && !store.Assume(new(variable, ~value)))
                {
                    return false;
                }

                store.Keep();
            }
        }

        return true;
    }

    /// <summary>Twins replaced, false literals and true clauses dropped, each clause once.</summary>
    private bool Rewrite()
    {
        var rewritten = new List<Literal[]>(_clauses.Count);
        var seen = new HashSet<ClauseText>(_clauses.Count);
        foreach (var clause in _clauses)
        {
            if (Rewrite(clause) is not { } literals)
            {
                continue;
            }

            if (literals.Length == 0)
            {
                return false;
            }

            if (seen.Add(new(literals)))
            {
                rewritten.Add(literals);
            }
        }

        _clauses = rewritten;
        return true;
    }

    /// <summary>Null where the clause always holds; the clause itself where nothing of it has changed.</summary>
    private Literal[]? Rewrite(Literal[] clause)
    {
        var literals = IsSettled(clause) ? clause : Settled(clause);
        foreach (var literal in literals)
        {
            if (literal.Values == _domains[literal.Variable])
            {
                return null;
            }
        }

        return literals;
    }

    private bool IsSettled(Literal[] clause)
    {
        var before = -1;
        foreach (var literal in clause)
        {
            if (literal.Variable <= before || literal != Resolve(literal) || literal.Values == 0)
            {
                return false;
            }

            before = literal.Variable;
        }

        return true;
    }

    /// <summary>In order of variables, each once, without values that are gone.</summary>
    private Literal[] Settled(Literal[] clause)
    {
        var literals = Array.ConvertAll(clause, Resolve);
        Array.Sort(literals, static (left, right) => left.Variable.CompareTo(right.Variable));
        var kept = 0;
        foreach (var literal in literals)
        {
            if (kept > 0 && literals[kept - 1].Variable == literal.Variable)
            {
                literals[kept - 1] = new(literal.Variable, literals[kept - 1].Values | literal.Values);
            }
            else if (literal.Values != 0)
            {
                literals[kept++] = literal;
            }
        }

        return literals[..kept];
    }

    /// <summary>The same said of the variable that this one is a twin of, within the values left.</summary>
    private Literal Resolve(Literal literal)
    {
        var (variable, values) = literal;
        while (_isTwin[variable])
        {
            var twin = _twins[variable];
            variable = twin.Of;
            values = twin.IsOpposite ? ((values & 1) << 1) | ((values >> 1) & 1) : values;
        }

        return new(variable, values & _domains[variable]);
    }

    /// <summary>Finds twins among binary variables by the implications of two-literal clauses; true if there were
    /// any.</summary>
    private bool Merge()
    {
        var found = Implications.Twins(_domains, _clauses);
        foreach (var (variable, twin) in found)
        {
            _twins.Add(variable, twin);
            _isTwin[variable] = true;
        }

        return found.Count > 0;
    }
}
