using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Configurator.Site.Inspecting;
using CsCheck;

namespace Configurator.Site.Tests.Inspecting;

public class TableGridTests
{
    // Worked by hand: columns from the left, cells that reach down keep their columns.
    [Theory]
    [InlineData("<tr><td><td><td>", "3")]
    [InlineData("<tr><td colspan=2><td>", "3")]
    [InlineData("<tr><td rowspan=2><td><tr><td>", "2 2")]
    [InlineData("<tr><td><td rowspan=3><tr><td><tr><td>", "2 2 2")]
    [InlineData("<tr><td rowspan=2 colspan=2><td><tr><td><td>", "3 4")]
    [InlineData("<tr><td rowspan=0><td><tr><td><tr><td>", "2 2 2")]
    [InlineData("<tr><td rowspan=2><tr>", "1 1")]
    [InlineData("<tr><td><td rowspan=2><tr><td colspan=2>", "2 2!")]
    [InlineData("<tr>", "0")]
    public void Rows_are_as_wide_as_their_cells_and_what_reaches_into_them(string rows, string widths) =>
        Assert.Equal(widths, Show(TableGrid.Measure(Rows(rows)).Select(row => (row.Width, row.Overlaps))));

    // Second algorithm: a sheet of squares, filled cell by cell the way one would draw it.
    [Fact]
    public void Any_table_is_as_wide_as_its_drawing() => Tables.Sample(table =>
    {
        var rows = string.Concat(table.Select(row => "<tr>" + string.Concat(row.Select(Cell))));
        var measured = Show(TableGrid.Measure(Rows(rows)).Select(row => (row.Width, row.Overlaps)));
        Assert.Equal(Show(Draw(table)), measured);
    });

    private static Gen<(int Columns, int Rows)[][]> Tables { get; } =
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3]).Array[0, 4].Array[1, 5];

    private static IEnumerable<(int Width, bool Overlaps)> Draw((int Columns, int Rows)[][] table)
    {
        var taken = new HashSet<(int Row, int Column)>();
        for (var row = 0; row < table.Length; row++)
        {
            var overlaps = false;
            var column = 0;
            foreach (var cell in table[row])
            {
                while (taken.Contains((row, column)))
                {
                    column++;
                }

                foreach (var square in Squares(row, column, cell))
                {
                    overlaps |= !taken.Add(square) && square.Row == row;
                }

                column += cell.Columns;
            }

            yield return (
                taken.Where(square => square.Row == row).Select(square => square.Column + 1).DefaultIfEmpty().Max(),
                overlaps);
        }
    }

    private static IEnumerable<(int Row, int Column)> Squares(int row, int column, (int Columns, int Rows) cell) =>
        from down in Enumerable.Range(row, cell.Rows)
        from right in Enumerable.Range(column, cell.Columns)
        select (down, right);

    private static string Cell((int Columns, int Rows) cell) => $"<td colspan={cell.Columns} rowspan={cell.Rows}>";

    private static string Show(IEnumerable<(int Width, bool Overlaps)> rows) =>
        string.Join(' ', rows.Select(row => $"{row.Width}{(row.Overlaps ? "!" : "")}"));

    private static IEnumerable<IHtmlTableRowElement> Rows(string rows) =>
        (
            (IHtmlTableElement)new HtmlParser().ParseDocument(
                $"<table><tbody>{rows}</table>").QuerySelector("table")!).Rows;
}
