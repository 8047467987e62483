using System.Collections.Immutable;
using System.IO.Compression;
using System.Xml.Linq;
using Configurator.Core.Documents;
using Configurator.Site.Downloads;

namespace Configurator.Site.Inspecting;

/// <summary>The tables of a workbook, by page and id, from the XML of its sheets.</summary>
internal static class BookTables
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static IReadOnlyDictionary<(string Page, string Table), CellGrid> Read(
        ReadOnlyMemory<byte> bytes,
        ImmutableArray<Sheet> sheets
    )
    {
        using var archive = new ZipArchive(new MemoryStream(bytes.ToArray()), ZipArchiveMode.Read);
        var tables = new Dictionary<(string, string), CellGrid>();
        for (var i = 0; i < sheets.Length; i++)
        {
            var entry = archive.GetEntry(FormattableString.Invariant($"xl/worksheets/sheet{i + 1}.xml"));
            if (entry is not null)
            {
                using var stream = entry.Open();
                Split(tables, sheets[i], XDocument.Load(stream));
            }
        }

        return tables;
    }

    /// <summary>The sheet's rows, after that of document control, to the tables that they belong to.</summary>
    private static void Split(Dictionary<(string, string), CellGrid> tables, Sheet sheet, XDocument xml)
    {
        var rows = xml.Descendants(Main + "row").Skip(1).Select(row => row.Elements(Main + "c").Select(TextOf).ToList()).ToList();
        foreach (var table in sheet.Tables)
        {
            var own = sheet.NamesTables ? rows.Skip(1).Where(row => row[0] == table.Caption) : rows.Skip(1);
            var first = sheet.NamesTables ? 1 : 0;
            tables[(DocumentSet.NameOf(sheet.Page), table.Id)] = new([
                .. own.Prepend(rows[0]).Select<List<string>, ImmutableArray<string>>(row => [.. row.Skip(first)]),
            ]);
        }
    }

    private static string TextOf(XElement cell) =>
        cell.Element(Main + "v")?.Value ?? string.Concat(cell.Descendants(Main + "t").Select(text => text.Value));
}
