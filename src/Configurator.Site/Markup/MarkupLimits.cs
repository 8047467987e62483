using Configurator.Core.Diagnostics;

namespace Configurator.Site.Markup;

/// <summary>
/// Bounds that no real note comes near. Parsing takes time with the square of some texts, and every row of a table is
/// filled up to the widest one, so 16 kB can grow to 40 MB.
/// </summary>
internal static class MarkupLimits
{
    public const int CharactersMax = 50_000;

    public const int TableCellsMax = 20_000;

    public static Diagnostic? Check(Prose prose)
    {
        var length = prose.Text.Text.Length;
        return length > CharactersMax ? MarkupDiagnostics.TooLong(length, CharactersMax, prose.Start)
            : CellsOfTables(prose) is > TableCellsMax and var cells
                ? MarkupDiagnostics.TooManyCells(cells, TableCellsMax, prose.Start)
            : null;
    }

    /// <summary>As if all lines with a bar were one table: never less than what will be made.</summary>
    private static long CellsOfTables(Prose prose)
    {
        var (rows, columns) = (0L, 0L);
        foreach (var line in prose.Text.Text.AsSpan().EnumerateLines())
        {
            var bars = line.Count('|');
            rows += bars > 0 ? 1 : 0;
            columns = Math.Max(columns, bars);
        }

        return rows * columns;
    }
}
