using System.Text.Json;

namespace Configurator.Site;

/// <summary>The file that tells what made a site; the only page-independent place where the revision stands.</summary>
internal static class BuildInfo
{
    public static ReadOnlyMemory<byte> Of(RunFacts facts)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("tool", "configurator");
            json.WriteString("version", facts.ToolVersion);
            json.WriteString("revision", facts.Revision);
            json.WriteString("date", facts.Date);
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }
}
