using AngleSharp.Html.Dom;

namespace Configurator.Site.Inspecting;

/// <summary>A row of a table as it is laid out.</summary>
/// <param name="Element">The row.</param>
/// <param name="Width">In columns: its own cells with their spans, and cells that reach down into it.</param>
/// <param name="Overlaps">Whether a wide cell lies on one that reaches down.</param>
internal readonly record struct MeasuredRow(IHtmlTableRowElement Element, int Width, bool Overlaps);

/// <summary>Lays the rows of one section out in columns (HTML Living Standard, 4.9.12.1, forming a table).</summary>
internal static class TableGrid
{
    public static IEnumerable<MeasuredRow> Measure(IEnumerable<IHtmlTableRowElement> section)
    {
        var reaching = new List<int>();
        foreach (var row in section)
        {
            yield return Measure(row, reaching);
            for (var column = 0; column < reaching.Count; column++)
            {
                reaching[column] = Math.Max(0, reaching[column] - 1);
            }
        }
    }

    /// <param name="row">The row to lay out.</param>
    /// <param name="reaching">For each column, how many rows from this one on are taken. The row adds its own.</param>
    private static MeasuredRow Measure(IHtmlTableRowElement row, List<int> reaching)
    {
        var column = 0;
        var overlaps = false;
        foreach (var cell in row.Cells)
        {
            while (column < reaching.Count && reaching[column] > 0)
            {
                column++;
            }

            for (var end = column + Math.Clamp(cell.ColumnSpan, 1, 1000); column < end; column++)
            {
                while (reaching.Count <= column)
                {
                    reaching.Add(0);
                }

                overlaps |= reaching[column] > 0;
                reaching[column] = Math.Max(reaching[column], RowsOf(cell));
            }
        }

        return new(row, reaching.FindLastIndex(rows => rows > 0) + 1, overlaps);
    }

    /// <summary>A span of 0 rows reaches to the end of the section.</summary>
    private static int RowsOf(IHtmlTableCellElement cell) =>
        cell.GetAttribute("rowspan") == "0" ? int.MaxValue : Math.Max(1, cell.RowSpan);
}
