using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Monitoring;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Monitoring;

/// <summary>The monitoring list for programs: the same points as on its page.</summary>
internal static class MonitoringFile
{
    private static readonly JsonWriterOptions Style = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static TextFile Of(DocumentContext context, EngineeredConfiguration configuration)
    {
        var path = PagePaths.MonitoringData(configuration.Published);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Style))
        {
            json.WriteStartObject();
            json.WriteString("$schema", PagePaths.Relative(path, MonitoringSchema.File.Path));
            WriteControl(json, context, configuration);
            json.WriteStartArray("points");
            foreach (var point in MonitoringPoints.Of(configuration.Report.Fitted))
            {
                Write(json, context, point);
            }

            json.WriteEndArray();
            json.WriteStartArray("events");
            foreach (var code in EventCode.All)
            {
                Write(json, context.Words, code);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return new(path, Encoding.UTF8.GetString(bytes.ToArray()) + "\n");
    }

    private static void WriteControl(
        Utf8JsonWriter json,
        DocumentContext context,
        EngineeredConfiguration configuration
    )
    {
        var control = context.Control(configuration.Published, MonitoringDocument.Suffix);
        json.WriteString("machine", configuration.Machine.Id.Value.Value);
        json.WriteString("configuration", configuration.Published.Id.Value.Value);
        json.WriteString("document", control.Number);
        json.WriteString("revision", control.Revision);
        json.WriteString("state", configuration.Published.Released is null ? "draft" : "released");
        json.WriteString("definitions", context.Definitions);
    }

    private static void Write(Utf8JsonWriter json, DocumentContext context, MonitoredPoint point)
    {
        json.WriteStartObject();
        json.WriteString("kind", Kebab.FromPascal(point.Kind.ToString()));
        json.WriteString("name", point.Signal?.Tag ?? point.Name);
        json.WriteString("designation", context.Designations.Of(point.Instance));
        json.WriteString("device", point.Instance.Device.Id.Value.Value);
        json.WriteString("master", point.Port.Master!.Value.Value);
        json.WriteNumber("port", point.Port.Port);
        if (point.Signal is { } signal)
        {
            WriteSignal(json, signal);
        }
        else
        {
            json.WriteNumber("index", point.Index ?? 0);
            json.WriteNumber("subindex", point.Subindex);
            WriteScale(json, point.Parameter?.Unit, point.Parameter?.Step);
        }

        json.WriteString("type", point.Type);
        if (point.EveryMilliseconds is { } every)
        {
            WriteNumber(json, "every-ms", every);
        }

        json.WriteString("read", Kebab.FromPascal(point.Reason.ToString()));
        json.WriteString("reason", context.Words.Of(point.Reason));
        json.WriteEndObject();
    }

    private static void WriteSignal(Utf8JsonWriter json, Signal signal)
    {
        if (signal.Item is { } item && signal.Data is { } data)
        {
            json.WriteNumber("octet", item.Octet);
            json.WriteNumber("bit", item.Bit);
            json.WriteNumber("length", item.Bits);
            json.WriteNumber("bit-offset", item.BitOffset(data.InputOctets));
            WriteScale(json, item.Range.Unit, item.Range.Step);
        }
        else if (signal.Pin is { } pin)
        {
            json.WriteNumber("pin", pin);
        }
    }

    private static void WriteScale(Utf8JsonWriter json, Unit? unit, Rational? step)
    {
        if (unit is not null)
        {
            json.WriteString("unit", unit.Symbol);
        }

        if (step is { } one)
        {
            WriteNumber(json, "step", one);
        }
    }

    /// <summary>In plain decimal digits, as pages print it.</summary>
    private static void WriteNumber(Utf8JsonWriter json, string name, Rational number)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(number.ToString());
    }

    private static void Write(Utf8JsonWriter json, SiteWords words, EventCode code)
    {
        json.WriteStartObject();
        json.WriteString("sent-by", code.IsPort ? "port" : "device");
        json.WriteNumber("code", code.Code);
        json.WriteString("meaning", words.Language == "es" ? code.Spanish : code.English);
        if (code.Status is { } status)
        {
            json.WriteNumber("status", status);
        }

        json.WriteEndObject();
    }
}
