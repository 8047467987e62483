using CsCheck;

namespace Configurator.Core.Tests.Logic.Searching;

/// <summary>Clauses as the solver takes them: literals 2v for true and 2v+1 for false.</summary>
internal static class RandomClauses
{
    /// <summary>
    /// Three literals a clause and about 4.26 clauses a variable, where half of all are satisfiable and the search is
    /// hardest.
    /// </summary>
    /// <remarks>Source: Crawford and Auton, The crossover point in random 3-SAT, 1996 (from memory).</remarks>
    public static Gen<(int Variables, int[][] Clauses)> NearThreshold(int variablesMax) =>
        from variables in Gen.Int[4, variablesMax]
        from both in Of(variables)
        select both;

    /// <summary>The same with just so many variables.</summary>
    public static Gen<(int Variables, int[][] Clauses)> Of(int variables) =>
        from ratio in Gen.Int[380, 480]
        from clauses in Gen.Int[0, (2 * variables) - 1].Array[3].Array[variables * ratio / 100]
        select (variables, clauses);

    /// <summary>The same with literals that are to hold as well.</summary>
    public static Gen<(int Variables, int[][] Clauses, int[] Assumptions)> WithAssumptions { get; } =
        from both in NearThreshold(12)
        from assumptions in Gen.Int[0, (2 * both.Variables) - 1].Array[0, 6]
        select (both.Variables, both.Clauses.Take(both.Clauses.Length * 3 / 4).ToArray(), assumptions);

    public static bool Holds(int[] clause, int assignment) => clause.Any(literal => IsTrue(literal, assignment));

    public static bool IsTrue(int literal, int assignment) => (assignment >> (literal / 2) & 1) == 1 - (literal & 1);

    /// <summary>Tries every assignment, one bit a variable.</summary>
    public static bool IsSatisfiable(int variables, IReadOnlyCollection<int[]> clauses) =>
        Enumerable.Range(0, 1 << variables).Any(assignment => clauses.All(clause => Holds(clause, assignment)));

    public static string Words((int Variables, int[][] Clauses) both) => Words(both.Variables, both.Clauses);

    public static string Words((int Variables, int[][] Clauses, int[] Assumptions) all) =>
        $"{Words(all.Variables, all.Clauses)} assuming {string.Join(' ', all.Assumptions)}";

    private static string Words(int variables, int[][] clauses) =>
        $"{variables} variables: {string.Join(", ", clauses.Select(clause => string.Join(' ', clause)))}";
}
