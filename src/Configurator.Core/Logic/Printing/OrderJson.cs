using System.Globalization;
using System.Text;
using System.Text.Json;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Printing;

/// <summary>What can be said of an order, for programs.</summary>
public static class OrderJson
{
    public static string Of(OrderLogic logic, OrderAnswer answer)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("machine", logic.Machine.Id.Value.Value);
            json.WriteBoolean("possible", answer.IsPossible);
            json.WriteString(
                "configurations-left",
                answer.Left?.ToString(CultureInfo.InvariantCulture) ?? "not computed"
            );
            Write(json, "forced", answer.Forced);
            Write(json, "ruled-out", answer.RuledOut);
            Write(json, "free", answer.Free);
            Write(json, answer.Open);
            Write(json, answer.Explanation);
            Write(json, answer.Nearest);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<OptionId> options)
    {
        json.WriteStartArray(name);
        foreach (var option in options)
        {
            json.WriteStringValue(option.Value);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, IEnumerable<OpenChoice> choices)
    {
        json.WriteStartArray("open-choices");
        foreach (var open in choices)
        {
            json.WriteStartObject();
            json.WriteString("choice", open.Choice.Id.Value.Value);
            Write(json, "members", open.Members);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Explanation? explanation)
    {
        if (explanation is null)
        {
            return;
        }

        json.WriteStartObject("explanation");
        Write(json, "picks", explanation.Picks);
        json.WriteStartArray("rules");
        foreach (var rule in explanation.Rules)
        {
            json.WriteStartObject();
            json.WriteString("statement", rule.Statement);
            json.WriteString("because", rule.Because?.In(Text.BaseLanguage));
            json.WriteString("path", rule.Span.Path);
            json.WriteNumber("line", rule.Span.Line);
            json.WriteNumber("column", rule.Span.Column);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("numbers");
        foreach (var fault in explanation.Numbers)
        {
            json.WriteStartObject();
            json.WriteString("option", fault.Option.Value);
            json.WriteNumber("from", fault.From);
            json.WriteNumber("to", fault.To);
            json.WriteNumber("ordered", fault.Ordered.From);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, IEnumerable<Repair> nearest)
    {
        json.WriteStartArray("nearest");
        foreach (var repair in nearest)
        {
            json.WriteStartObject();
            json.WriteStartArray("changes");
            foreach (var change in repair.Changes)
            {
                json.WriteStartObject();
                json.WriteString("option", change.Option.Value);
                json.WriteNumber("quantity", change.After);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Write(json, repair.Open);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
