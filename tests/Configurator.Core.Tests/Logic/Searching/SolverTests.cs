using Configurator.Core.Logic.Searching;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Searching;

// Source of every expected answer: trying all assignments (RandomClauses), unless it stands beside the test.
public class SolverTests
{
    private const int Formulas = 1000;

    [Fact]
    public void Clauses_can_hold_exactly_when_some_assignment_makes_them() => Cases.Check(RandomClauses.NearThreshold(14), 51, Formulas, both =>
    {
        var solver = Solver(both.Variables, both.Clauses);
        Assert.Equal(RandomClauses.IsSatisfiable(both.Variables, both.Clauses), solver.Solve());
    }, RandomClauses.Words);

    [Fact]
    public void An_assignment_found_keeps_all_clauses_and_assumptions() => Cases.Check(RandomClauses.WithAssumptions, 52, Formulas, all =>
    {
        var solver = Solver(all.Variables, all.Clauses);
        if (solver.Solve(all.Assumptions))
        {
            var found = Enumerable.Range(0, all.Variables).Sum(variable => solver.IsTrue(variable) ? 1 << variable : 0);
            Assert.All(all.Clauses, clause => Assert.True(RandomClauses.Holds(clause, found)));
            Assert.All(all.Assumptions, literal => Assert.True(RandomClauses.IsTrue(literal, found)));
        }
    }, RandomClauses.Words);

    [Fact]
    public void A_core_is_among_the_assumptions_and_cannot_hold_with_the_clauses() => Cases.Check(RandomClauses.WithAssumptions, 53, Formulas, all =>
    {
        var solver = Solver(all.Variables, all.Clauses);
        var holds = RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, all.Assumptions));
        Assert.Equal(holds, solver.Solve(all.Assumptions));
        if (!holds)
        {
            Assert.Subset(all.Assumptions.ToHashSet(), solver.Core.ToHashSet());
            Assert.False(RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, solver.Core)));
        }
    }, RandomClauses.Words);

    [Fact]
    public void Clauses_added_one_by_one_are_taken_into_account_at_once() => Cases.Check(RandomClauses.NearThreshold(8), 54, Formulas / 5, both =>
    {
        var solver = Solver(both.Variables, []);
        for (var count = 1; count <= both.Clauses.Length; count++)
        {
            solver.Add(both.Clauses[count - 1]);
            Assert.Equal(RandomClauses.IsSatisfiable(both.Variables, both.Clauses[..count]), solver.Solve());
        }
    }, RandomClauses.Words);

    [Fact]
    public void Assumptions_bind_one_call_only() => Cases.Check(RandomClauses.WithAssumptions, 55, Formulas / 5, all =>
    {
        var solver = Solver(all.Variables, all.Clauses);
        foreach (var literal in all.Assumptions)
        {
            Assert.Equal(RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, [literal])), solver.Solve(literal));
            Assert.Equal(RandomClauses.IsSatisfiable(all.Variables, all.Clauses), solver.Solve());
        }
    }, RandomClauses.Words);

    // Worked by hand: seven pigeons do not fit into six holes; Haken 1985 shows that no short proof by resolution says so.
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
        var solver = Solver(1, []);
        Assert.True(solver.Solve());
        solver.Add();
        Assert.False(solver.Solve(0));
        Assert.Empty(solver.Core);
    }

    // Worked by hand.
    [Fact]
    public void Opposite_assumptions_are_their_own_core()
    {
        var solver = Solver(2, []);
        Assert.False(solver.Solve(2, 3));
        Assert.Equal([2, 3], solver.Core.Order());
    }

    private static Solver Solver(int variables, IEnumerable<int[]> clauses)
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

    private static List<int[]> With(IEnumerable<int[]> clauses, IEnumerable<int> literals) =>
        [.. clauses, .. literals.Select(literal => new[] { literal })];

    private static Solver Pigeons(int pigeons, int holes)
    {
        var solver = Solver(pigeons * holes, []);
        int In(int pigeon, int hole) => 2 * ((pigeon * holes) + hole);
        for (var pigeon = 0; pigeon < pigeons; pigeon++)
        {
            solver.Add([.. Enumerable.Range(0, holes).Select(hole => In(pigeon, hole))]);
            for (var other = 0; other < pigeon; other++)
            {
                Enumerable.Range(0, holes).ToList().ForEach(hole => solver.Add(In(pigeon, hole) + 1, In(other, hole) + 1));
            }
        }

        return solver;
    }
}
