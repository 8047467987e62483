using System.Collections.Immutable;
using System.Text.Json;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Printing;

/// <summary>What a SARIF log says of its rules: those of diagnostics by code, then kinds of changes.</summary>
internal sealed class SarifRules
{
    private readonly ImmutableArray<SarifRule> _rules;
    private readonly Dictionary<string, int> _index;

    private SarifRules(ImmutableArray<SarifRule> rules)
    {
        _rules = rules;
        _index = rules
            .Select((rule, i) => (rule.Id, i))
            .ToDictionary(pair => pair.Id, pair => pair.i, StringComparer.Ordinal);
    }

    public static SarifRules Of(IEnumerable<Rule> rules) =>
        new([
            .. rules
                .DistinctBy(rule => rule.Code, StringComparer.Ordinal)
                .OrderBy(rule => rule.Code, StringComparer.Ordinal)
                .Select(rule => new SarifRule(rule.Code, rule.Title, rule.Title, rule.Severity)),
            .. ChangeKinds.All.Select(kind => new SarifRule(kind.Id, kind.Title, kind.Meaning, kind.Level)),
        ]);

    public int IndexOf(string id) => _index[id];

    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("rules");
        foreach (var rule in _rules)
        {
            json.WriteStartObject();
            json.WriteString("id", rule.Id);
            WriteText(json, "shortDescription", rule.Title);
            WriteText(json, "fullDescription", rule.Meaning);
            json.WriteStartObject("defaultConfiguration");
            json.WriteString("level", DiagnosticText.Word(rule.Level));
            json.WriteEndObject();
            if (RuleBook.Page(rule.Id) is { } page)
            {
                json.WriteStartObject("help");
                json.WriteString("text", page);
                json.WriteString("markdown", page);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    private sealed record SarifRule(string Id, string Title, string Meaning, Severity Level);
}
