using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Configurator.Core.Sources;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>Prints diagnostics for programs.</summary>
public static class DiagnosticJson
{
    internal static readonly JsonWriterOptions Style = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = WithoutHashes(),
    };

    /// <param name="counts">Named numbers of the run, printed first.</param>
    public static string Of(IEnumerable<Diagnostic> diagnostics, IEnumerable<KeyValuePair<string, int>> counts)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Style))
        {
            json.WriteStartObject();
            json.WriteStartObject("counts");
            foreach (var (name, count) in counts)
            {
                json.WriteNumber(name, count);
            }

            json.WriteEndObject();
            json.WriteStartArray("diagnostics");
            foreach (var diagnostic in Diagnostic.InOrder(diagnostics))
            {
                Write(json, diagnostic);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Diagnostic diagnostic)
    {
        json.WriteStartObject();
        json.WriteString("code", diagnostic.Rule.Code);
        json.WriteString("severity", DiagnosticText.Word(diagnostic.Rule.Severity));
        json.WriteString("title", diagnostic.Rule.Title);
        json.WriteString("message", diagnostic.Message);
        Write(json, diagnostic.Span);
        json.WriteStartArray("notes");
        foreach (var note in diagnostic.Notes)
        {
            json.WriteStartObject();
            json.WriteString("message", note.Message);
            Write(json, note.Span);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (diagnostic.Fix is { } fix)
        {
            json.WriteStartObject("fix");
            json.WriteString("message", fix.Message);
            if (fix.Replacement is { } replacement)
            {
                json.WriteString("replacement", replacement);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    /// <summary>A build log takes <c>##[name]</c> for a command, also within JSON; as an escape it means the same and
    /// is none.</summary>
    private static JavaScriptEncoder WithoutHashes()
    {
        var settings = new TextEncoderSettings(UnicodeRanges.BasicLatin);
        settings.ForbidCharacters('#');
        return JavaScriptEncoder.Create(settings);
    }

    private static void Write(Utf8JsonWriter json, SourceSpan span)
    {
        json.WriteString("path", span.Path);
        json.WriteNumber("line", span.Line);
        json.WriteNumber("column", span.Column);
        json.WriteNumber("length", span.Length);
    }
}
