using System.Collections.Immutable;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Configurator.Site.Inspecting;

/// <summary>The tables of a page, by id, as a reader sees them.</summary>
internal static class PageTables
{
    private const string Ending = "-table";

    /// <summary>How a page shows an empty cell.</summary>
    private const string Empty = "–";

    public static IReadOnlyDictionary<string, CellGrid> Read(string path, ReadOnlyMemory<byte> bytes) =>
        (HtmlPage.Read(path, bytes)?.Document.QuerySelectorAll("table") ?? Enumerable.Empty<IElement>())
            .OfType<IHtmlTableElement>()
            .Where(table => table.Id?.EndsWith(Ending, StringComparison.Ordinal) == true)
            .ToDictionary(table => table.Id![..^Ending.Length], GridOf, StringComparer.Ordinal);

    private static CellGrid GridOf(IHtmlTableElement table) =>
        new([
            .. table.Rows.Select<IHtmlTableRowElement, ImmutableArray<string>>(row =>
                [.. row.Cells.Select(cell => CellGrid.Spaced(cell.TextContent) is var text && text == Empty ? "" : text)]
            ),
        ]);
}
