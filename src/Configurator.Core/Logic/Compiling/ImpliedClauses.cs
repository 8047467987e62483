using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>Drops long clauses of which two literals are a clause by themselves.</summary>
internal static class ImpliedClauses
{
    public static List<Literal[]> LeftOutOf(List<Literal[]> clauses)
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
}
