using System.Collections.Immutable;
using System.Text.Json;

namespace Configurator.Site.Inspecting;

/// <summary>The tables of a JSON file, by page and id.</summary>
internal static class JsonTables
{
    public static IReadOnlyDictionary<(string Page, string Table), CellGrid> Read(ReadOnlyMemory<byte> bytes)
    {
        using var json = JsonDocument.Parse(bytes);
        return json
            .RootElement.GetProperty("documents")
            .EnumerateArray()
            .SelectMany(document =>
                document.GetProperty("tables").EnumerateArray().Select(table => (Page: PageOf(document), Table: table))
            )
            .ToDictionary(pair => (pair.Page, pair.Table.GetProperty("id").GetString()!), pair => GridOf(pair.Table));
    }

    private static string PageOf(JsonElement document) => document.GetProperty("page").GetString()![..^".html".Length];

    private static CellGrid GridOf(JsonElement table) =>
        new([
            Texts(table.GetProperty("columns")),
            .. table.GetProperty("rows").EnumerateArray().Select(Texts),
        ]);

    private static ImmutableArray<string> Texts(JsonElement array) =>
        [.. array.EnumerateArray().Select(text => text.GetString()!)];
}
