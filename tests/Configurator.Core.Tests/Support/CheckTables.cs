using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Core.Tests.Support;

/// <summary>Tables of a finished page.</summary>
internal static class CheckTables
{
    public static Table Of(Page page, string id) =>
        page.Sections.SelectMany(section => section.Blocks).OfType<Table>().Single(table => table.Id == id);

    /// <summary>Texts of a column, top down.</summary>
    public static ImmutableArray<string> Column(Page page, string id, int column) =>
        [.. Of(page, id).Rows.Select(row => row.Cells[column].Text)];

    /// <summary>Rows as plain lines.</summary>
    public static ImmutableArray<string> Lines(Page page, string id) =>
        [.. Of(page, id).Rows.Select(row => string.Join(" | ", row.Cells.Select(cell => cell.Text)))];
}
