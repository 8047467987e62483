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
    private List<Literal[]> _clauses;

    private Simplifier(Formula formula)
    {
        _domains = [.. Enumerable.Range(0, formula.Sizes.Length).Select(formula.Domain)];
        _clauses = [.. formula.Clauses.Select(clause => clause.Literals.ToArray())];
    }

    private Simplified Result => new(_domains, _clauses, _twins);

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

        for (var variable = 0; variable < _domains.Length; variable++)
        {
            _domains[variable] = store.Domain(variable);
        }

        return Rewrite();
    }

    /// <summary>A value that leads to a contradiction is struck out.</summary>
    private static bool Probe(ClauseStore store)
    {
        store.Keep();
        for (var variable = 0; variable < store.VariableCount; variable++)
        {
            for (var left = store.Domain(variable); left != 0 && !store.IsFixed(variable); left &= left - 1)
            {
                var value = left & (~left + 1);
                var fits = store.Assume(new(variable, value));
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

    /// <summary>Twins replaced, false literals and true clauses dropped, each clause once, none that a shorter one
    /// implies.</summary>
    private bool Rewrite()
    {
        var rewritten = new List<Literal[]>(_clauses.Count);
        var seen = new HashSet<ClauseText>();
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

        _clauses = WithoutImplied(rewritten);
        return true;
    }

    /// <summary>Null where the clause always holds; the clause itself where nothing of it has changed.</summary>
    private Literal[]? Rewrite(Literal[] clause)
    {
        var literals = Array.TrueForAll(clause, IsSettled) && IsSorted(clause) ? clause : Sorted(clause);
        foreach (var literal in literals)
        {
            if (literal.Values == _domains[literal.Variable])
            {
                return null;
            }
        }

        return literals;
    }

    private bool IsSettled(Literal literal) =>
        literal.Values != 0
        && (literal.Values & ~_domains[literal.Variable]) == 0
        && !_twins.ContainsKey(literal.Variable);

    private static bool IsSorted(Literal[] clause)
    {
        for (var i = 1; i < clause.Length; i++)
        {
            if (clause[i - 1].Variable >= clause[i].Variable)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>In order of variables, each once, without values that are gone.</summary>
    private Literal[] Sorted(Literal[] clause)
    {
        var byVariable = new SortedDictionary<int, ulong>();
        foreach (var literal in clause)
        {
            var (variable, values) = Resolve(literal);
            byVariable[variable] = byVariable.GetValueOrDefault(variable) | (values & _domains[variable]);
        }

        return [.. byVariable.Where(entry => entry.Value != 0).Select(entry => new Literal(entry.Key, entry.Value))];
    }

    private (int Variable, ulong Values) Resolve(Literal literal)
    {
        var (variable, values) = literal;
        while (_twins.TryGetValue(variable, out var twin))
        {
            variable = twin.Of;
            values = twin.IsOpposite ? ((values & 1) << 1) | ((values >> 1) & 1) : values;
        }

        return (variable, values);
    }

    /// <summary>Drops long clauses of which two literals are a clause by themselves.</summary>
    private static List<Literal[]> WithoutImplied(List<Literal[]> clauses)
    {
        const int LengthMax = 40;
        var pairs = clauses.Where(clause => clause.Length == 2).Select(clause => (clause[0], clause[1])).ToHashSet();
        return [.. clauses.Where(clause => clause.Length is <= 2 or > LengthMax || !HasPair(clause, pairs))];
    }

    private static bool HasPair(Literal[] clause, HashSet<(Literal, Literal)> pairs)
    {
        for (var i = 0; i < clause.Length; i++)
        {
            for (var j = i + 1; j < clause.Length; j++)
            {
                if (pairs.Contains((clause[i], clause[j])))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Finds twins among binary variables by the implications of two-literal clauses; true if there were
    /// any.</summary>
    private bool Merge()
    {
        var found = Implications.Twins(_domains, _clauses);
        foreach (var (variable, twin) in found)
        {
            _twins.Add(variable, twin);
        }

        return found.Count > 0;
    }

    /// <summary>A clause as a value.</summary>
    private readonly struct ClauseText(Literal[] literals) : IEquatable<ClauseText>
    {
        private readonly Literal[] _literals = literals;

        public bool Equals(ClauseText other) => _literals.AsSpan().SequenceEqual(other._literals);

        public override bool Equals(object? obj) => obj is ClauseText other && Equals(other);

        public override int GetHashCode()
        {
            var hash = 17UL;
            foreach (var literal in _literals)
            {
                hash = unchecked((hash ^ literal.Values ^ ((ulong)literal.Variable << 20)) * 0x9E3779B97F4A7C15UL);
            }

            return (int)(hash >> 33);
        }
    }
}
