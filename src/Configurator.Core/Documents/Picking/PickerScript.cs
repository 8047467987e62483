using System.Text;
using System.Text.Json;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Picking;

/// <summary>
/// All that the page needs to pick an order of one machine, as a classic script that sets one global. Whatever is not
/// plain ASCII, or means something in markup, is escaped: titles can end neither the text nor the script.
/// </summary>
internal static class PickerScript
{
    /// <summary>Changes when a script of ours can no longer read what an older tool wrote.</summary>
    private const int Form = 1;

    public static string Of(DocumentContext context, Machine machine, CheckedSet checkedSet) =>
        Of(json =>
        {
            var logic = context.Engineered.Proved.Logic[machine.Id.Value].Logic;
            var conditions = new ConditionTable(machine);
            json.WriteString("definitions", context.Definitions);
            WriteMachine(json, context, machine);
            PickerOptions.Write(json, machine, context.Language);
            PickerRules.Write(json, logic, context.Language);
            PickerLoads.Write(json, logic, conditions, context.Language);
            PickerLoads.WriteParts(json, machine, conditions, context.Language);
            conditions.Write(json);
            PickerOrders.Write(json, context, machine, checkedSet);
            WriteWords(json, context.Words);
        });

    /// <param name="write">Writes the members of the global.</param>
    private static string Of(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteNumber("form", Form);
            write(json);
            json.WriteEndObject();
        }

        return $"var configuratorOrder = {Encoding.UTF8.GetString(bytes.ToArray())};\n";
    }

    private static void WriteMachine(Utf8JsonWriter json, DocumentContext context, Machine machine)
    {
        json.WriteStartObject("machine");
        json.WriteString("id", machine.Id.Value.Value);
        json.WriteString("title", context.In(machine.Title));
        json.WriteString("document", machine.Document);
        json.WriteString("revision", machine.Revision);
        json.WriteNumber("rate", machine.Rate is { } rate ? Thousandth(rate) : 0);
        json.WriteEndObject();
    }

    /// <summary>The words of the page's own scripts, which have none in them.</summary>
    private static void WriteWords(Utf8JsonWriter json, SiteWords words)
    {
        json.WriteStartObject("words");
        foreach (var (name, text) in words.Picking)
        {
            json.WriteString(name, text);
        }

        json.WriteEndObject();
    }

    /// <summary>Thousandths of a cycle a minute, not rounded up.</summary>
    public static int Thousandth(Quantity rate) => -(int)(rate.InBase * -1000).Ceiling();
}
