using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;

namespace Configurator.Core.Documents;

/// <summary>The documents of one published configuration: the pages that readers see, and what downloads are made
/// of.</summary>
public sealed record DocumentSet(EngineeredConfiguration Engineered, ImmutableArray<Page> Pages)
{
    /// <summary>Folder of the set, from the site's root, with a slash at the end.</summary>
    public string Folder { get; } = PagePaths.Of(Engineered.Published)[..^"index.html".Length];

    /// <summary>File name of its downloads, without ending.</summary>
    public string Name => Engineered.Published.Document.Value.ToLowerInvariant();

    public string Workbook => $"{Folder}{Name}.xlsx";

    public string Json => $"{Folder}{Name}.json";

    /// <summary>One table by itself.</summary>
    public string CsvOf(Page page, Table table) => $"{Folder}tables/{NameOf(page)}-{table.Id}.csv";

    /// <summary>Pages that have tables, each with them, in reading order.</summary>
    public IEnumerable<(Page Page, ImmutableArray<Table> Tables)> Tables =>
        Pages.Select(page => (page, TablesOf(page))).Where(pair => pair.Item2.Length > 0);

    public Table? Find(string id) =>
        Tables.SelectMany(pair => pair.Tables).FirstOrDefault(table => table.Id == id);

    /// <summary>The page's file name without its ending.</summary>
    public static string NameOf(Page page) =>
        page.Path[(page.Path.LastIndexOf('/') + 1)..^".html".Length];

    private static ImmutableArray<Table> TablesOf(Page page) =>
        [.. page.Sections.SelectMany(section => section.Blocks).OfType<Table>().Where(table => table.Rows.Length > 0)];
}
