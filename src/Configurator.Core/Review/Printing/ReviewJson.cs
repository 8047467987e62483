using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Review.Printing;

/// <summary>A review for programs, in the form that its schema says.</summary>
public static class ReviewJson
{
    public static string Of(ReviewReport report, ReviewVerdict verdict)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, DiagnosticJson.Style))
        {
            json.WriteStartObject();
            json.WriteNumber("version", ReviewSchema.Version);
            json.WriteString("before", report.Before);
            json.WriteString("after", report.After);
            WriteVerdict(json, report, verdict);
            Write(json, "notCompared", report.Limits);
            json.WriteStartArray("changes");
            foreach (var change in report.Changes)
            {
                Write(json, change, verdict.Fails(change));
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void WriteVerdict(Utf8JsonWriter json, ReviewReport report, ReviewVerdict verdict)
    {
        json.WriteStartObject("verdict");
        json.WriteBoolean("fails", verdict.Fails(report));
        json.WriteString("failOn", verdict.Written);
        json.WriteNumber("errors", report.Count(Severity.Error));
        json.WriteNumber("warnings", report.Count(Severity.Warning));
        json.WriteNumber("notes", report.Count(Severity.Note));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Change change, bool fails)
    {
        json.WriteStartObject();
        json.WriteString("kind", change.Kind.Id);
        json.WriteString("topic", ReviewSchema.Word(change.Kind.Topic));
        json.WriteString("level", DiagnosticText.Word(change.Level));
        json.WriteBoolean("fails", fails);
        if (change.Machine is { } machine)
        {
            json.WriteString("machine", machine.Value);
        }

        json.WriteString("subject", change.Subject);
        json.WriteString("before", change.Before);
        json.WriteString("after", change.After);
        json.WriteString("remark", change.Remark);
        Write(json, "details", change.Details);
        Write(json, "configurations", change.Configurations);
        Write(json, "pagesBefore", change.PagesBefore);
        Write(json, "pagesAfter", change.PagesAfter);
        if (change.Line is { } line)
        {
            json.WriteStartObject("place");
            json.WriteString("path", line.Path);
            json.WriteNumber("line", line.Line);
            json.WriteNumber("column", line.Column);
            json.WriteNumber("length", line.Length);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
