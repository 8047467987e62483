using System.Text;
using Configurator.Core.Documents;

namespace Configurator.Site.Downloads;

/// <summary>Files beside the pages: a workbook and a JSON file for each configuration, and each table by itself.</summary>
internal static class DownloadFiles
{
    public static IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> Of(SiteDocuments documents)
    {
        var files = new IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>>[documents.Sets.Length];
        Parallel.For(0, files.Length, i => files[i] = [.. Of(documents.Sets[i])]);
        return documents.Sets.IsEmpty
            ? []
            : files.SelectMany(set => set).Append(new(DocumentsJson.SchemaPath, Schema()));
    }

    private static IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> Of(DocumentSet set) =>
        [
            new(set.Workbook, Workbook.Of(set)),
            new(set.Json, DocumentsJson.Of(set)),
            .. set.Tables.SelectMany(pair =>
                pair.Tables.Select(table =>
                    KeyValuePair.Create<string, ReadOnlyMemory<byte>>(
                        set.CsvOf(pair.Page, table),
                        Encoding.UTF8.GetBytes(CsvText.Of(table))
                    )
                )
            ),
        ];

    private static ReadOnlyMemory<byte> Schema()
    {
        using var stream = typeof(DownloadFiles).Assembly.GetManifestResourceStream("documents.v1.schema.json")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
