using Configurator.Core.Logic.Searching;

namespace Configurator.Core.Tests.Logic.Searching;

internal static class Solvers
{
    /// <summary>A solver with so many variables and these clauses.</summary>
    public static Solver Of(int variables, IEnumerable<int[]> clauses)
    {
        var solver = new Solver();
        for (var variable = 0; variable < variables; variable++)
        {
            solver.NewVariable();
        }

        foreach (var clause in clauses)
        {
            solver.Add(clause);
        }

        return solver;
    }
}
