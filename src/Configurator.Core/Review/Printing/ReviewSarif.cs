using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Printing;

/// <summary>A review as a SARIF log: what is wrong with the later side, the new marked, and what changed in meaning at
/// the lines concerned.</summary>
/// <remarks>Source: Static Analysis Results Interchange Format (SARIF) Version 2.1.0, OASIS Standard.</remarks>
public static class ReviewSarif
{
    private const string Schema =
        "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private const int ResultsMax = 5000;

    /// <param name="rules">Of all stages.</param>
    /// <param name="folder">The catalogue's, from the repository's top; empty where it is the top.</param>
    public static string Of(ReviewReport report, IEnumerable<Rule> rules, string toolVersion, string folder = "")
    {
        var known = SarifRules.Of(rules.Concat(report.Faults.Select(fault => fault.Diagnostic.Rule)));
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, DiagnosticJson.Style))
        {
            json.WriteStartObject();
            json.WriteString("$schema", Schema);
            json.WriteString("version", "2.1.0");
            json.WriteStartArray("runs");
            json.WriteStartObject();
            WriteTool(json, known, toolVersion);
            json.WriteStartObject("automationDetails");
            json.WriteString("id", "configurator-review/");
            json.WriteEndObject();
            json.WriteString("columnKind", "utf16CodeUnits");
            WriteResults(json, [.. SarifResult.Of(report).Take(ResultsMax)], known, folder);
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void WriteTool(Utf8JsonWriter json, SarifRules rules, string version)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "configurator");
        json.WriteString("version", version);
        rules.Write(json);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteResults(
        Utf8JsonWriter json,
        ImmutableArray<SarifResult> results,
        SarifRules rules,
        string folder
    )
    {
        json.WriteStartArray("results");
        foreach (var result in results)
        {
            json.WriteStartObject();
            json.WriteString("ruleId", result.RuleId);
            json.WriteNumber("ruleIndex", rules.IndexOf(result.RuleId));
            json.WriteString("level", DiagnosticText.Word(result.Level));
            json.WriteStartObject("message");
            json.WriteString("text", result.Message);
            json.WriteEndObject();
            json.WriteStartArray("locations");
            json.WriteStartObject();
            WriteLocation(json, result.Span.Below(folder));
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteStartObject("partialFingerprints");
            json.WriteString("configurator/v1", result.Fingerprint);
            json.WriteEndObject();
            json.WriteString("baselineState", result.IsNew ? "new" : "unchanged");
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLocation(Utf8JsonWriter json, SourceSpan span)
    {
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", string.Join('/', span.Path.Split('/').Select(Uri.EscapeDataString)));
        json.WriteString("uriBaseId", "%SRCROOT%");
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", span.Line);
        json.WriteNumber("startColumn", span.Column);
        json.WriteNumber("endColumn", span.Column + Math.Max(0, span.Length));
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
