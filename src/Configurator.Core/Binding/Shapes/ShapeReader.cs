using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding.Shapes;

/// <summary>Reads syntax after a shape: sound values come back, everything else is reported, each fault once.</summary>
internal sealed class ShapeReader(ICollection<Diagnostic> report)
{
    /// <summary>The record, or null where the node is no map at all.</summary>
    public Fields? ReadRecord(SyntaxNode node, RecordShape shape) => Read(node, shape)?.Value as Fields;

    public Located<object>? Read(SyntaxNode node, Shape shape) =>
        (shape, node) switch
        {
            (_, RefusedSyntax) => null,
            (RecordShape record, MappingSyntax map) => new(ReadFields(map, record), map.Span),
            (ListShape list, SequenceSyntax sequence) => ReadList(sequence, list),
            (TableShape table, MappingSyntax map) => ReadTable(map, table),
            (TextShape, MappingSyntax map) => ReadLanguages(map),
            (ConditionShape or RequirementShape or LinkShape, _) => ReadCondition(node, shape),
            (not (RecordShape or ListShape or TableShape), ScalarSyntax scalar) => new ScalarReader(report).Read(
                scalar,
                shape
            ),
            _ => Refuse(node, shape),
        };

    private Fields ReadFields(MappingSyntax map, RecordShape shape)
    {
        var start = report.Count;
        var values = ImmutableDictionary.CreateBuilder<string, Located<object>>(StringComparer.Ordinal);
        var faulty = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (var (key, node) in map.Entries.Where(entry => shape.Find(entry.Key.Text) is not null))
        {
            var before = report.Count;
            if (Read(node, shape.Find(key.Text)!.Shape) is { } value)
            {
                values.Add(key.Text, value);
            }

            if (!values.ContainsKey(key.Text) || report.Count > before || !node.IsSound)
            {
                faulty.Add(key.Text);
            }
        }

        var keysAreKnown = CheckKeys(map, shape);
        return new(shape, map.Span, values.ToImmutable(), faulty.ToImmutable())
        {
            KeysAreKnown = keysAreKnown && map.IsWhole,
            IsWhole = report.Count == start && map.IsSound,
        };
    }

    /// <summary>Reports keys that the record does not have and those that it lacks; a misspelt one is not lacking as
    /// well.</summary>
    private bool CheckKeys(MappingSyntax map, RecordShape shape)
    {
        var absent = shape.Fields.Where(field => map[field.Key] is null).ToList();
        var strangers = map.Entries.Select(entry => entry.Key).Where(key => shape.Find(key.Text) is null).ToList();
        var meant = strangers.Select(key => Nearest.To(key.Text, absent.Select(field => field.Key))).ToList();
        foreach (var (key, nearest) in strangers.Zip(meant))
        {
            report.Add(BindingDiagnostics.KeyUnknown(key, shape, nearest));
        }

        foreach (
            var field in absent.Where(field =>
                field.IsRequired && map.IsWhole && !meant.Contains(field.Key, StringComparer.Ordinal)
            )
        )
        {
            report.Add(BindingDiagnostics.KeyMissing(field, shape, map.Span));
        }

        return strangers.Count == 0;
    }

    private Located<object>? ReadList(SequenceSyntax sequence, ListShape list)
    {
        ImmutableArray<Located<object>> items =
        [
            .. sequence.Items.Select(item => Read(item, list.Item)).OfType<Located<object>>(),
        ];
        return new(items, sequence.Span);
    }

    private Located<object>? ReadTable(MappingSyntax map, TableShape table)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<Located<string>, Located<object>>>();
        foreach (var (key, node) in map.Entries)
        {
            if (Read(key, table.Key) is { } name && Read(node, table.Value) is { } value)
            {
                entries.Add(new(new(key.Text, name.Span), value));
            }
        }

        return new(entries.DrainToImmutable(), map.Span);
    }

    private Located<object>? ReadLanguages(MappingSyntax map)
    {
        var texts = new List<KeyValuePair<string, string>>();
        foreach (var (key, node) in map.Entries)
        {
            if (!IsLanguage(key.Text))
            {
                report.Add(BindingDiagnostics.LanguageUnknown(key));
            }
            else if (node is ScalarSyntax scalar && Read(scalar, new LineShape("a text")) is { Value: string text })
            {
                texts.Add(new(key.Text, text));
            }
            else if (node is not (ScalarSyntax or RefusedSyntax))
            {
                Refuse(node, new LineShape("a text"));
            }
        }

        if (map.Entries.Length == 0)
        {
            report.Add(BindingDiagnostics.ValueEmpty(map, new TextShape()));
        }

        return texts.Count == 0 ? null : new(Model.Text.Of(texts), map.Span);
    }

    private Located<object>? ReadCondition(SyntaxNode node, Shape shape)
    {
        var reader = new ConditionReader(report);
        object? value = shape switch
        {
            LinkShape => reader.ReadLink(node),
            RequirementShape => reader.ReadRequirement(node),
            _ => reader.Read(node),
        };
        return value is null ? null : new(value, node.Span);
    }

    private Located<object>? Refuse(SyntaxNode node, Shape shape)
    {
        report.Add(BindingDiagnostics.FormWrong(node, shape));
        return null;
    }

    /// <summary>A two-letter code of ISO 639-1.</summary>
    private static bool IsLanguage(string key) => key.Length == 2 && key.All(char.IsAsciiLetterLower);
}
