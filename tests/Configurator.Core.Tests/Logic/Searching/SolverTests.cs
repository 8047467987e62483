using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Searching;

// Source of every expected answer: trying all assignments (RandomClauses), unless it stands beside the test.
public class SolverTests
{
    private const int Formulas = 1000;

    [Fact]
    public void Clauses_can_hold_exactly_when_some_assignment_makes_them() =>
        Cases.Check(
            RandomClauses.NearThreshold(14),
            51,
            Formulas,
            both =>
            {
                var solver = Solvers.Of(both.Variables, both.Clauses);
                Assert.Equal(RandomClauses.IsSatisfiable(both.Variables, both.Clauses), solver.Solve());
            },
            RandomClauses.Words
        );

    [Fact]
    public void An_assignment_found_keeps_all_clauses_and_assumptions() =>
        Cases.Check(
            RandomClauses.WithAssumptions,
            52,
            Formulas,
            all =>
            {
                var solver = Solvers.Of(all.Variables, all.Clauses);
                if (solver.Solve(all.Assumptions))
                {
                    var found = Enumerable
                        .Range(0, all.Variables)
                        .Sum(variable => solver.IsTrue(variable) ? 1 << variable : 0);
                    Assert.All(all.Clauses, clause => Assert.True(RandomClauses.Holds(clause, found)));
                    Assert.All(all.Assumptions, literal => Assert.True(RandomClauses.IsTrue(literal, found)));
                }
            },
            RandomClauses.Words
        );

    [Fact]
    public void A_core_is_among_the_assumptions_and_cannot_hold_with_the_clauses() =>
        Cases.Check(
            RandomClauses.WithAssumptions,
            53,
            Formulas,
            all =>
            {
                var solver = Solvers.Of(all.Variables, all.Clauses);
                var holds = RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, all.Assumptions));
                Assert.Equal(holds, solver.Solve(all.Assumptions));
                if (!holds)
                {
                    Assert.Subset(all.Assumptions.ToHashSet(), solver.Core.ToHashSet());
                    Assert.False(RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, solver.Core)));
                }
            },
            RandomClauses.Words
        );

    [Fact]
    public void Clauses_added_one_by_one_are_taken_into_account_at_once() =>
        Cases.Check(
            RandomClauses.NearThreshold(8),
            54,
            Formulas / 5,
            both =>
            {
                var solver = Solvers.Of(both.Variables, []);
                for (var count = 1; count <= both.Clauses.Length; count++)
                {
                    solver.Add(both.Clauses[count - 1]);
                    Assert.Equal(RandomClauses.IsSatisfiable(both.Variables, both.Clauses[..count]), solver.Solve());
                }
            },
            RandomClauses.Words
        );

    [Fact]
    public void Assumptions_bind_one_call_only() =>
        Cases.Check(
            RandomClauses.WithAssumptions,
            55,
            Formulas / 5,
            all =>
            {
                var solver = Solvers.Of(all.Variables, all.Clauses);
                foreach (var literal in all.Assumptions)
                {
                    Assert.Equal(
                        RandomClauses.IsSatisfiable(all.Variables, With(all.Clauses, [literal])),
                        solver.Solve(literal)
                    );
                    Assert.Equal(RandomClauses.IsSatisfiable(all.Variables, all.Clauses), solver.Solve());
                }
            },
            RandomClauses.Words
        );

    // Second algorithm: the compiler, on formulas with more variables than can be tried out.
    [Fact]
    public void Search_and_compiler_agree_on_formulas_of_forty_variables() =>
        Cases.Check(
            RandomClauses.Of(40),
            56,
            150,
            both =>
                Assert.Equal(
                    !Compiled(both.Variables, both.Clauses).IsEmpty,
                    Solvers.Of(both.Variables, both.Clauses).Solve()
                ),
            RandomClauses.Words
        );

    private static Diagram Compiled(int variables, int[][] clauses) =>
        DiagramCompiler.Compile(
            new(
                [.. Enumerable.Repeat(2, variables)],
                [
                    .. clauses.Select(
                        (clause, i) =>
                            new Clause(
                                [
                                    .. clause.Select(literal => new Literal(
                                        literal / 2,
                                        (literal & 1) == 0 ? 0b10UL : 0b01UL
                                    )),
                                ],
                                i
                            )
                    ),
                ]
            ),
            CompileLimits.None
        )!;

    private static List<int[]> With(IEnumerable<int[]> clauses, IEnumerable<int> literals) =>
        [.. clauses, .. literals.Select(literal => new[] { literal })];
}
