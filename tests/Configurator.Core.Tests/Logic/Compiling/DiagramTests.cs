using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Compiling;

// Source of every expected answer: trying all assignments (Assignments), unless it stands beside the test.
public class DiagramTests
{
    private const int Formulas = 2000;

    [Fact]
    public void A_diagram_has_as_many_solutions_as_its_formula() =>
        Check(41, formula => Assert.Equal(Assignments.Satisfying(formula).Count(), Counting.Count(Compiled(formula))));

    [Fact]
    public void An_assignment_satisfies_the_root_exactly_when_it_satisfies_the_formula() =>
        Check(
            42,
            formula =>
            {
                var diagram = Compiled(formula);
                Assert.All(
                    Assignments.All(formula.Sizes),
                    values =>
                        Assert.Equal(
                            Assignments.Holds(formula, values),
                            !diagram.IsEmpty && Assignments.Satisfied(diagram, values)[^1]
                        )
                );
            }
        );

    [Fact]
    public void Children_stand_before_parents_and_share_all_variables_or_none() =>
        Check(43, formula => Shape.IsSound(Compiled(formula)));

    [Fact]
    public void No_assignment_satisfies_two_children_of_which_one_must_hold() =>
        Check(
            44,
            formula =>
            {
                var diagram = Compiled(formula);
                foreach (
                    var satisfied in Assignments
                        .All(formula.Sizes)
                        .Select(values => Assignments.Satisfied(diagram, values))
                )
                {
                    Assert.All(
                        Enumerable.Range(0, diagram.NodeCount).Where(node => diagram.Kinds[node] == NodeKind.One),
                        node =>
                            Assert.InRange(diagram.ChildrenOf(node).ToArray().Count(child => satisfied[child]), 0, 1)
                    );
                }
            }
        );

    [Fact]
    public void Solutions_within_given_values_are_counted_and_found_exactly() =>
        CheckWithin(
            45,
            (formula, within, diagram) =>
            {
                var solutions = Assignments
                    .Satisfying(formula)
                    .Where(values => Assignments.IsWithin(values, within))
                    .ToList();
                Assert.Equal(solutions.Count, Counting.Count(diagram, within));
                Assert.Equal(solutions.Count > 0, Reaching.IsSatisfiable(diagram, within));
            }
        );

    [Fact]
    public void A_value_is_possible_exactly_when_some_solution_takes_it() =>
        CheckWithin(
            46,
            (formula, within, diagram) =>
            {
                var solutions = Assignments
                    .Satisfying(formula)
                    .Where(values => Assignments.IsWithin(values, within))
                    .ToList();
                Assert.Equal(
                    Enumerable
                        .Range(0, formula.Sizes.Length)
                        .Select(variable =>
                            solutions.Aggregate(0UL, (found, values) => found | (1UL << values[variable]))
                        ),
                    Reaching.Possible(diagram, within)
                );
            }
        );

    [Fact]
    public void Compiling_again_gives_the_same_arrays() =>
        Check(
            47,
            formula =>
            {
                var (one, other) = (Compiled(formula), Compiled(formula));
                Assert.Equal(one.Kinds, other.Kinds);
                Assert.Equal(one.Children, other.Children);
                Assert.Equal(one.Values, other.Values);
            }
        );

    // 64 values each; worked by hand: equal last values leave 1 pair, of all others 63 x 63; so 3970 in all.
    [Fact]
    public void Variables_may_have_sixty_four_values()
    {
        const ulong Last = 1UL << 63;
        var formula = new Formula(
            [64, 64],
            [new([new(0, ~Last), new(1, Last)], 0), new([new(0, Last), new(1, ~Last)], 1)]
        );
        Assert.Equal(3970, Counting.Count(Compiled(formula)));
    }

    // Worked by hand. With the second variable at 2, the first loses value 1, and no clause tells 0 from 2 any more:
    // 2 x 3 solutions. With it at 0 or 1, the first may be 1 with 4 solutions, or 0 or 2 with 3 each: 2 x 10.
    [Fact]
    public void Values_that_no_clause_tells_apart_any_more_stay_together()
    {
        int[] sizes = [3, 3, 2, 2];
        foreach (var place in Orders(sizes.Length))
        {
            var formula = new Formula(
                [.. place.Select(variable => sizes[variable])],
                [
                    new([new(place.IndexOf(0), 0b101), new(place.IndexOf(1), 0b011)], 0),
                    new(
                        [new(place.IndexOf(0), 0b010), Literal.True(place.IndexOf(2)), Literal.True(place.IndexOf(3))],
                        1
                    ),
                ]
            );
            Assert.Equal(26, Counting.Count(Compiled(formula)));
        }
    }

    // Worked by hand: nothing at all can be assigned in one way.
    [Fact]
    public void A_formula_without_variables_has_one_solution() =>
        Assert.Equal(1, Counting.Count(Compiled(new([], []))));

    // Worked by hand: 30 variables free, or bound in pairs that leave 3 of 4.
    [Fact]
    public void Parts_that_share_no_variable_multiply()
    {
        var pairs = Enumerable
            .Range(0, 15)
            .Select(i => new Clause([Literal.True(2 * i), Literal.True((2 * i) + 1)], i));
        Assert.Equal(BigInteger.Pow(2, 30), Counting.Count(Compiled(new(Twos(30), []))));
        Assert.Equal(BigInteger.Pow(3, 15), Counting.Count(Compiled(new(Twos(30), [.. pairs]))));
    }

    [Fact]
    public void Beyond_its_limits_a_compilation_ends_without_a_diagram() =>
        Assert.Null(
            DiagramCompiler.Compile(
                new(Twos(3), [new([Literal.True(0), Literal.True(1), Literal.True(2)], 0)]),
                new(1, 1, 1)
            )
        );

    /// <summary>All orders of so many things.</summary>
    private static IEnumerable<ImmutableList<int>> Orders(int count) =>
        count == 0
            ?
            [
                [],
            ]
            : Orders(count - 1)
                .SelectMany(order => Enumerable.Range(0, count).Select(place => order.Insert(place, count - 1)));

    private static Diagram Compiled(Formula formula) => DiagramCompiler.Compile(formula, CompileLimits.None)!;

    private static ImmutableArray<int> Twos(int variables) => [.. Enumerable.Repeat(2, variables)];

    private static void Check(uint stream, Action<Formula> check) =>
        Cases.Check(RandomFormulas.All, stream, Formulas, check, RandomFormulas.Words);

    private static void CheckWithin(uint stream, Action<Formula, ulong[], Diagram> check) =>
        Cases.Check(
            RandomFormulas.WithValues,
            stream,
            Formulas,
            both => check(both.Formula, both.Within, Compiled(both.Formula)),
            both => RandomFormulas.Words(both.Formula)
        );
}
