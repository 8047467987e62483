using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Site.Inspecting;

/// <summary>The cells of a table as some file holds them: first the header, then the rows.</summary>
internal sealed record CellGrid(ImmutableArray<ImmutableArray<string>> Rows)
{
    private const int ShownMax = 60;

    public static CellGrid Of(Table table) =>
        new([
            [.. table.Columns.Select(column => Spaced(column.Title))],
            .. table.Rows.Select<Row, ImmutableArray<string>>(row => [.. row.Cells.Select(cell => Spaced(cell.Text))]),
        ]);

    /// <summary>The first cell that is another one there, in words; null where all are the same.</summary>
    public string? DifferenceFrom(CellGrid? other)
    {
        if (other is null)
        {
            return "it is not there";
        }

        if (other.Rows.Length != Rows.Length)
        {
            return FormattableString.Invariant($"it has {other.Rows.Length - 1} rows and not {Rows.Length - 1}");
        }

        for (var row = 0; row < Rows.Length; row++)
        {
            if (!Rows[row].SequenceEqual(other.Rows[row].Select(Spaced)))
            {
                return InRow(row, other.Rows[row]);
            }
        }

        return null;
    }

    private string InRow(int row, ImmutableArray<string> other)
    {
        for (var column = 0; column < Math.Min(Rows[row].Length, other.Length); column++)
        {
            if (Rows[row][column] != Spaced(other[column]))
            {
                return FormattableString.Invariant(
                    $"row {row}, column {column + 1} says `{Shown(other[column])}` and not `{Shown(Rows[row][column])}`"
                );
            }
        }

        return FormattableString.Invariant($"row {row} has {other.Length} columns and not {Rows[row].Length}");
    }

    /// <summary>White space is not compared: a page shows a run of it as one blank.</summary>
    public static string Spaced(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Shown(string text) => text.Length > ShownMax ? text[..ShownMax] + "..." : text;
}
