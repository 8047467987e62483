using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>WCAG 2.2, 1.3.1: a table says what it is and what each cell belongs to.</summary>
internal static class TableChecks
{
    public static IEnumerable<Diagnostic> Check(HtmlPage page) =>
        from table in page.Document.QuerySelectorAll<IHtmlTableElement>("table")
        from mistake in Captions(table).Concat(Heads(table)).Concat(Shapes(table))
        select InspectionDiagnostics.BadTable(mistake.What, page.SpanOf(mistake.Where));

    private static IEnumerable<(string What, IElement Where)> Captions(IHtmlTableElement table)
    {
        if (string.IsNullOrWhiteSpace(table.Caption?.TextContent))
        {
            yield return ("the table has no caption", table);
        }
    }

    private static IEnumerable<(string What, IElement Where)> Heads(IHtmlTableElement table)
    {
        var heads = Cells(table.Rows).OfType<IHtmlTableHeaderCellElement>().ToArray();
        if (heads.Length == 0)
        {
            yield return ("the table has no header cells", table);
        }
        else if (table.Head is { } head && !Cells(head.Rows).OfType<IHtmlTableHeaderCellElement>().Any())
        {
            yield return ("the table's `thead` has no header cells", head);
        }

        foreach (var cell in heads.Where(cell => !HasScope(cell)))
        {
            yield return ("the header cell has no `scope`", cell);
        }
    }

    /// <summary>Every row as wide as the table's first, with all spans counted.</summary>
    private static IEnumerable<(string What, IElement Where)> Shapes(IHtmlTableElement table)
    {
        int? width = null;
        foreach (var section in Sections(table))
        {
            foreach (var row in TableGrid.Measure(section))
            {
                width ??= row.Width;
                if (row.Overlaps)
                {
                    yield return ("the row's cells overlap a cell that spans rows from above", row.Element);
                }
                else if (row.Width != width)
                {
                    yield return (
                        FormattableString.Invariant($"the row is {row.Width} cells wide, the first is {width}"),
                        row.Element
                    );
                }
            }
        }
    }

    private static bool HasScope(IElement cell) =>
        cell.GetAttribute("scope") is "row" or "col" or "rowgroup" or "colgroup";

    private static IEnumerable<IHtmlTableCellElement> Cells(IEnumerable<IHtmlTableRowElement> rows) =>
        rows.SelectMany(row => row.Cells);

    /// <summary>Spans of rows end with their section (HTML Living Standard, 4.9.12.1).</summary>
    private static IEnumerable<IEnumerable<IHtmlTableRowElement>> Sections(IHtmlTableElement table) =>
        table.Rows.GroupBy(row => row.ParentElement, (_, rows) => rows);
}
