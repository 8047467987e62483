using System.Collections.Immutable;
using System.Text.Json;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Picking;

/// <summary>The rules of a machine as the page reads them: options by their place in ordinal order of ids.</summary>
public static class PickerRules
{
    /// <summary>The diagram, null where the rules are too entangled for one, and the clauses with the words of their
    /// rules.</summary>
    public static void Write(Utf8JsonWriter json, OrderLogic logic, string language)
    {
        var machine = logic.Machine;
        var compiled = logic.Compiled;
        var search = logic.Search.Options;
        json.WriteStartObject("logic");
        json.WriteString("diagram", compiled.Diagram is { } diagram ? RulesText.Of(diagram) : null);
        json.WriteString("clauses", RulesText.Of(search.Formula));
        WriteVariables(json, "variables", machine, id => compiled.Options.Variables[id].Variable);
        WriteVariables(json, "searched", machine, id => search.Variables[id].Variable);
        json.WriteStartArray("counts");
        foreach (var id in machine.Options.Keys)
        {
            Write(json, compiled.Options.Variables[id].Counts);
        }

        json.WriteEndArray();
        WriteSentences(json, logic, language);
        json.WriteEndObject();
    }

    private static void WriteVariables(Utf8JsonWriter json, string name, Machine machine, Func<OptionId, int> variable)
    {
        json.WriteStartArray(name);
        foreach (var id in machine.Options.Keys)
        {
            json.WriteNumberValue(variable(id));
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, ImmutableArray<int> counts)
    {
        json.WriteStartArray();
        foreach (var count in counts)
        {
            json.WriteNumberValue(count);
        }

        json.WriteEndArray();
    }

    /// <summary>What each rule says, and why.</summary>
    private static void WriteSentences(Utf8JsonWriter json, OrderLogic logic, string language)
    {
        var titles = new Titles(logic.Machine, language);
        json.WriteStartArray("rules");
        foreach (var rule in logic.Rules)
        {
            json.WriteStartArray();
            json.WriteStringValue(titles.In(rule.Statement));
            json.WriteStringValue(rule.Because?.In(language) ?? "");
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
