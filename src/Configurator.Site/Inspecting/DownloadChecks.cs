using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Site.Downloads;

namespace Configurator.Site.Inspecting;

/// <summary>Reads pages, CSV, JSON and workbooks back and holds them against each other cell by cell.</summary>
internal static class DownloadChecks
{
    public static IEnumerable<Diagnostic> Check(SiteDocuments documents, SiteFiles site) =>
        documents.Sets.AsParallel().AsOrdered().SelectMany(set => Check(set, site)).AsSequential();

    private static ImmutableArray<Diagnostic> Check(DocumentSet set, SiteFiles site)
    {
        var json = JsonTables.Read(site.Files[set.Json]);
        var book = BookTables.Read(site.Files[set.Workbook], Sheet.Of(set));
        var faults = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (var (page, tables) in set.Tables)
        {
            var shown = PageTables.Read(page.Path, site.Files[page.Path]);
            foreach (var table in tables)
            {
                var key = (DocumentSet.NameOf(page), table.Id);
                var csv = set.CsvOf(page, table);
                Hold(page.Path, table, shown.GetValueOrDefault(table.Id));
                Hold(csv, table, CsvTable.Read(Encoding.UTF8.GetString(site.Files[csv].Span)));
                Hold(set.Json, table, json.GetValueOrDefault(key));
                Hold(set.Workbook, table, book.GetValueOrDefault(key));
            }
        }

        return faults.ToImmutable();

        void Hold(string file, Table table, CellGrid? read)
        {
            if (CellGrid.Of(table).DifferenceFrom(read) is { } difference)
            {
                faults.Add(DownloadDiagnostics.Differs(file, table.Id, difference));
            }
        }
    }
}
