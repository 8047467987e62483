using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Known;

/// <summary>A Latin square as a machine: a cell is an option, and how often it is taken is its symbol.</summary>
public class LatinSquareTests
{
    // Source: OEIS A002860.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 12)]
    [InlineData(4, 576)]
    [InlineData(5, 161_280)]
    public void Latin_squares_have_their_known_number(int order, int squares) =>
        Assert.Equal(squares, OrderLogic.Of(Square(order)).Count(PartialOrder.Empty));

    // Source: OEIS A000315; n! (n-1)! times as many are the squares that need not be sorted.
    [Theory]
    [InlineData(4, 4)]
    [InlineData(5, 56)]
    public void Latin_squares_with_sorted_first_row_and_column_have_their_known_number(int order, int squares)
    {
        var sorted = Enumerable
            .Range(0, order)
            .Aggregate(
                PartialOrder.Empty,
                (partial, i) => partial.With(Cell(0, i), new(i + 1, i + 1)).With(Cell(i, 0), new(i + 1, i + 1))
            );
        Assert.Equal(squares, OrderLogic.Of(Square(order)).Count(sorted));
    }

    private static Machine Square(int order)
    {
        var numbers = Enumerable.Range(0, order).ToList();
        var cells = numbers.SelectMany(row => numbers.Select(column => (Row: row, Column: column))).ToList();
        var different = cells.SelectMany(one =>
            cells
                .Where(other =>
                    (one.Row == other.Row && one.Column < other.Column)
                    || (one.Column == other.Column && one.Row < other.Row)
                )
                .SelectMany(other =>
                    numbers.Select(symbol =>
                        Machines.Rule(
                            "different",
                            new NoneOf(
                                [new AllOf([Holds(one, symbol + 1), Holds(other, symbol + 1)], default)],
                                default
                            )
                        )
                    )
                )
        );
        return Machines.Of(
            cells.Select(cell => Machines.Option(Cell(cell.Row, cell.Column).Value, 1, order)),
            [],
            [
                .. cells.Select(cell => Machines.Rule("filled", Machines.Taken(Cell(cell.Row, cell.Column)))),
                .. different,
            ]
        );
    }

    private static OptionCount Holds((int Row, int Column) cell, int symbol) =>
        new(Cell(cell.Row, cell.Column), symbol, symbol, default);

    private static OptionId Cell(int row, int column) => new($"r{row}c{column}");
}
