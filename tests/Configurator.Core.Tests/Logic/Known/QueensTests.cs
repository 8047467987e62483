using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Known;

/// <summary>A board as a machine: each row is a choice of one square, and no two queens attack each other.</summary>
public class QueensTests
{
    /// <summary>Ways to place n queens. Source: OEIS A000170.</summary>
    public static TheoryData<int, int> Placements { get; } =
        new()
        {
            { 4, 2 },
            { 5, 10 },
            { 6, 4 },
            { 7, 40 },
        };

    [Theory]
    [MemberData(nameof(Placements))]
    public void Queens_that_exclude_each_other_by_rules_of_two_have_their_known_number_of_placements(
        int size,
        int placements
    ) => Assert.Equal(placements, OrderLogic.Of(ByRules(size)).Count(PartialOrder.Empty));

    [Theory]
    [MemberData(nameof(Placements))]
    public void Queens_limited_to_one_a_column_and_diagonal_have_their_known_number_of_placements(
        int size,
        int placements
    ) => Assert.Equal(placements, OrderLogic.Of(ByLimits(size)).Count(PartialOrder.Empty));

    // Source: the two placements of four queens, drawn by hand, leave both corners of the first row empty.
    [Fact]
    public void A_queen_in_a_corner_of_a_board_of_four_cannot_be_completed()
    {
        var logic = OrderLogic.Of(ByRules(4));
        Assert.True(logic.States(PartialOrder.Empty)[Square(0, 0)].IsRuledOut);
        Assert.NotNull(logic.Explain(PartialOrder.Empty.With(Square(0, 0), NumberRange.AtLeastOne)));
    }

    private static Machine ByRules(int size)
    {
        var squares = Squares(size);
        var attacks = squares.SelectMany(one =>
            squares
                .Where(other => one.Row < other.Row && Lines(one).Any(line => Lines(other).Contains(line)))
                .Select(other =>
                    Machines.Rule(
                        "attack",
                        Machines.NotTogether(Square(one.Row, one.Column).Value, Square(other.Row, other.Column).Value)
                    )
                )
        );
        return Machines.Of(Options(size), Rows(size), attacks);
    }

    private static Machine ByLimits(int size) =>
        Machines.Of(
            Options(size),
            Rows(size),
            limits: Squares(size)
                .SelectMany(square =>
                    Lines(square).Select(line => (Line: line, Square: Square(square.Row, square.Column)))
                )
                .GroupBy(pair => pair.Line, pair => (pair.Square, 1))
                .Where(line => line.Count() > 1)
                .Select(line => Machines.Limit("line", 1, line))
        );

    private static IEnumerable<Option> Options(int size) =>
        Squares(size).Select(square => Machines.Option(Square(square.Row, square.Column).Value));

    private static IEnumerable<Choice> Rows(int size) =>
        Squares(size)
            .GroupBy(square => square.Row, square => Square(square.Row, square.Column))
            .Select(row => Machines.Choice("row", Take.ExactlyOne, row));

    private static ImmutableArray<(int Row, int Column)> Squares(int size) =>
        [.. Enumerable.Range(0, size * size).Select(square => Math.DivRem(square, size))];

    /// <summary>The column and the two diagonals that a square lies on.</summary>
    private static (char Kind, int Number)[] Lines((int Row, int Column) square) =>
        [('|', square.Column), ('/', square.Row + square.Column), ('\\', square.Row - square.Column)];

    private static OptionId Square(int row, int column) => new($"r{row}c{column}");
}
