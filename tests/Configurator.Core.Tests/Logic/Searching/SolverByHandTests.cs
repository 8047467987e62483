using Configurator.Core.Logic.Searching;

namespace Configurator.Core.Tests.Logic.Searching;

public class SolverByHandTests
{
    // Worked by hand; Haken 1985 shows that resolution has no short proof of it, so the search has to work.
    [Fact]
    public void Seven_pigeons_do_not_fit_into_six_holes_but_six_do()
    {
        Assert.False(Pigeons(7, 6).Solve());
        Assert.True(Pigeons(6, 6).Solve());
    }

    // Worked by hand.
    [Fact]
    public void An_empty_clause_can_never_hold()
    {
        var solver = Solvers.Of(1, []);
        Assert.True(solver.Solve());
        solver.Add();
        Assert.False(solver.Solve(0));
        Assert.Empty(solver.Core);
    }

    // Worked by hand.
    [Fact]
    public void Opposite_assumptions_are_their_own_core()
    {
        var solver = Solvers.Of(2, []);
        Assert.False(solver.Solve(2, 3));
        Assert.Equal([2, 3], solver.Core.Order());
    }

    private static Solver Pigeons(int pigeons, int holes)
    {
        var solver = Solvers.Of(pigeons * holes, []);
        int In(int pigeon, int hole) => 2 * ((pigeon * holes) + hole);
        for (var pigeon = 0; pigeon < pigeons; pigeon++)
        {
            solver.Add([.. Enumerable.Range(0, holes).Select(hole => In(pigeon, hole))]);
            for (var other = 0; other < pigeon; other++)
            {
                Enumerable
                    .Range(0, holes)
                    .ToList()
                    .ForEach(hole => solver.Add(In(pigeon, hole) + 1, In(other, hole) + 1));
            }
        }

        return solver;
    }
}
