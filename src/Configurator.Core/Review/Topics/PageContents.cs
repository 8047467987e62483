using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text;
using Configurator.Core.Documents;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Topics;

/// <summary>All that a finished page says, as text: whatever blocks it is made of. Where a passage stands in the
/// definitions is not part of it.</summary>
/// <param name="Sections">Text by heading.</param>
internal sealed record PageContents(string Title, string Whole, ImmutableArray<KeyValuePair<string, string>> Sections)
{
    private static readonly System.Collections.Concurrent.ConcurrentDictionary<Type, PropertyInfo[]> Known = new();

    public static PageContents Of(Page page) =>
        new(
            page.Title,
            TextOf(page),
            [.. page.Sections.Select(section => KeyValuePair.Create(section.Title, TextOf(section)))]
        );

    public string ChangedSince(PageContents before)
    {
        var was = before.Sections.ToLookup(section => section.Key, section => section.Value, StringComparer.Ordinal);
        var sections = Sections
            .Where(section => !was[section.Key].Contains(section.Value, StringComparer.Ordinal))
            .Select(section => section.Key)
            .Concat(
                before
                    .Sections.Select(section => section.Key)
                    .Except(Sections.Select(section => section.Key), StringComparer.Ordinal)
            )
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return sections.Count == 0 ? "head of the page" : string.Join(", ", sections);
    }

    private static string TextOf(object value)
    {
        var text = new StringBuilder();
        Append(text, value);
        return text.ToString();
    }

    private static void Append(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null or SiteWords or SourceSpan:
                break;
            case string words:
                text.Append(words).Append('\n');
                break;
            case IFormattable number:
                text.Append(number.ToString(null, CultureInfo.InvariantCulture)).Append('\n');
                break;
            case bool:
                text.Append(value).Append('\n');
                break;
            case IEnumerable items:
                foreach (var item in items)
                {
                    Append(text, item);
                }

                text.Append(".\n");
                break;
            default:
                AppendParts(text, value);
                break;
        }
    }

    private static void AppendParts(StringBuilder text, object value)
    {
        text.Append(value.GetType().Name).Append('\n');
        foreach (var part in Known.GetOrAdd(value.GetType(), PartsOf))
        {
            Append(text, part.GetValue(value));
        }
    }

    private static PropertyInfo[] PartsOf(Type type) =>
        [
            .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(part => part.GetIndexParameters().Length == 0)
                .OrderBy(part => part.Name, StringComparer.Ordinal),
        ];
}
