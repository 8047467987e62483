using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Site.Downloads;

/// <summary>All tables of a configuration in one file, after <c>schemas/documents.v1.schema.json</c>.</summary>
internal static class DocumentsJson
{
    public const string SchemaPath = "schemas/documents.v1.schema.json";

    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    public static ReadOnlyMemory<byte> Of(DocumentSet set)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            var published = set.Engineered.Published;
            json.WriteStartObject();
            json.WriteString("$schema", PagePaths.Relative(set.Json, SchemaPath));
            json.WriteString("machine", published.Machine.Value);
            json.WriteString("configuration", published.Id.Value.Value);
            json.WriteString("revision", published.Revision);
            json.WriteStartArray("documents");
            foreach (var (page, tables) in set.Tables)
            {
                Write(json, page, tables);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    private static void Write(Utf8JsonWriter json, Page page, IEnumerable<Table> tables)
    {
        json.WriteStartObject();
        json.WriteString("number", page.Control!.Number);
        json.WriteString("state", page.Control.State);
        json.WriteString("definitions", page.Control.Definitions);
        json.WriteString("title", page.Title);
        json.WriteString("page", page.Path[(page.Path.LastIndexOf('/') + 1)..]);
        json.WriteStartArray("tables");
        foreach (var table in tables)
        {
            json.WriteStartObject();
            json.WriteString("id", table.Id);
            json.WriteString("title", table.Caption);
            WriteTexts(json, "columns", table.Columns.Select(column => column.Title));
            json.WriteStartArray("rows");
            foreach (var row in table.Rows)
            {
                WriteTexts(json, null, row.Cells.Select(cell => cell.Text));
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter json, string? name, IEnumerable<string> texts)
    {
        if (name is null)
        {
            json.WriteStartArray();
        }
        else
        {
            json.WriteStartArray(name);
        }

        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
