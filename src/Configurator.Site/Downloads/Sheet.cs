using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Site.Downloads;

/// <summary>One sheet of a workbook: tables of one document that have the same columns. Where there are several, a first
/// column says which row is of which.</summary>
internal sealed record Sheet(string Name, Page Page, ImmutableArray<Table> Tables)
{
    /// <summary>Longest name that spreadsheets take. Source: Open XML workbooks in practice, from memory.</summary>
    private const int NameMax = 31;

    public bool NamesTables => Tables.Length > 1;

    public IEnumerable<string> Header =>
        (NamesTables ? [Page.Words.Table] : Enumerable.Empty<string>()).Concat(
            Tables[0].Columns.Select(column => column.Title)
        );

    public IEnumerable<ImmutableArray<string>> Rows =>
        Tables.SelectMany(table =>
            table.Rows.Select<Row, ImmutableArray<string>>(row =>
                [
                    .. NamesTables ? [table.Caption] : Enumerable.Empty<string>(),
                    .. row.Cells.Select(cell => cell.Text),
                ]
            )
        );

    public static ImmutableArray<Sheet> Of(DocumentSet set)
    {
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (page, tables) in set.Tables)
        {
            foreach (var alike in tables.GroupBy(ColumnsOf, StringComparer.Ordinal))
            {
                sheets.Add(new(Unique(names, $"{Suffix(page)} {alike.First().Id}"), page, [.. alike]));
            }
        }

        return sheets.ToImmutable();
    }

    private static string ColumnsOf(Table table) => string.Join('\n', table.Columns.Select(column => column.Title));

    /// <summary>The end of the document number, such as <c>WT</c>.</summary>
    private static string Suffix(Page page) => page.Control!.Number[(page.Control.Number.LastIndexOf('-') + 1)..];

    private static string Unique(HashSet<string> names, string wanted)
    {
        var name = wanted.Length > NameMax ? wanted[..NameMax] : wanted;
        for (var number = 2; !names.Add(name); number++)
        {
            var end = FormattableString.Invariant($" {number}");
            name = wanted[..Math.Min(wanted.Length, NameMax - end.Length)] + end;
        }

        return name;
    }
}
