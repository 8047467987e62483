using System.Text.Json;

namespace Configurator.Cli.Disk;

/// <summary>
/// How a site of ours is told from any other folder with checksums: its <c>build-info.json</c> begins with
/// <c>{"tool": "configurator"</c>.
/// </summary>
internal static class SiteMarker
{
    public const string FileName = "build-info.json";
    private const int BytesMax = 1 << 20;

    public static bool IsOurs(ReadOnlySpan<byte> buildInfo)
    {
        var reader = new Utf8JsonReader(buildInfo);
        try
        {
            return reader.Read()
                && reader.TokenType == JsonTokenType.StartObject
                && reader.Read()
                && reader.TokenType == JsonTokenType.PropertyName
                && reader.ValueTextEquals("tool")
                && reader.Read()
                && reader.TokenType == JsonTokenType.String
                && reader.ValueTextEquals("configurator");
        }
        catch (JsonException)
        {
            return false;
        }
    }

    public static bool Marks(string folder)
    {
        var path = Path.Combine(folder, FileName);
        return FileKinds.Of(path) == FileKind.Regular
            && new FileInfo(path).Length <= BytesMax
            && IsOurs(File.ReadAllBytes(path));
    }
}
