using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

/// <summary>What a definition says, a line for each value, by the keys that lead to it: for comparing two states of a
/// file without knowing what it defines.</summary>
internal static class WrittenValues
{
    /// <summary>Entries of a list of maps are known by the first value of each; the rest of a flat entry is one value,
    /// as a list of plain values is.</summary>
    public static ImmutableSortedDictionary<string, (string Text, SourceSpan Span)> Of(MappingSyntax root)
    {
        var values = ImmutableSortedDictionary.CreateBuilder<string, (string, SourceSpan)>(StringComparer.Ordinal);
        Add(values, "", root);
        return values.ToImmutable();
    }

    private static void Add(
        ImmutableSortedDictionary<string, (string, SourceSpan)>.Builder values,
        string path,
        SyntaxNode node
    )
    {
        switch (node)
        {
            case MappingSyntax map:
                foreach (var entry in map.Entries)
                {
                    Add(values, Below(path, entry.Key.Text), entry.Value);
                }

                break;
            case SequenceSyntax list when list.Items.All(item => item is ScalarSyntax):
                values[path] = (
                    string.Join(", ", list.Items.Cast<ScalarSyntax>().Select(item => item.Text)),
                    list.Span
                );
                break;
            case SequenceSyntax list:
                foreach (var item in list.Items)
                {
                    AddItem(values, Below(path, NameOf(item)), item);
                }

                break;
            case ScalarSyntax scalar:
                values[path] = (scalar.Text, scalar.Span);
                break;
        }
    }

    private static void AddItem(
        ImmutableSortedDictionary<string, (string, SourceSpan)>.Builder values,
        string path,
        SyntaxNode item
    )
    {
        if (item is MappingSyntax flat && flat.Entries.All(entry => entry.Value is ScalarSyntax))
        {
            var rest = flat.Entries.Skip(1).Select(entry => $"{entry.Key.Text} {((ScalarSyntax)entry.Value).Text}");
            values[path] = (string.Join(", ", rest), item.Span);
        }
        else
        {
            Add(values, path, item);
        }
    }

    private static string NameOf(SyntaxNode item) =>
        item switch
        {
            MappingSyntax { Entries: [{ Value: ScalarSyntax first }, ..] } => first.Text,
            ScalarSyntax scalar => scalar.Text,
            _ => "",
        };

    private static string Below(string path, string key) => path.Length == 0 ? key : $"{path} {key}";
}
