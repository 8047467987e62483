using System.Globalization;
using System.Text;

namespace Configurator.Cli.Disk;

/// <summary>Which names in a catalogue are passed over, and which are not fit to be shown as they are.</summary>
internal static class CatalogueNames
{
    /// <summary>Hidden entries and what editors leave beside the file being edited.</summary>
    public static bool IsIgnored(string name) =>
        name.StartsWith('.') || name.EndsWith('~') || name.EndsWith(".swp", StringComparison.Ordinal);

    /// <summary>False for names that could deceive a terminal or a reader, or that are not UTF-8.</summary>
    public static bool IsPlain(string name) => name.EnumerateRunes().All(IsPlain);

    /// <summary>The name with every rune that is not plain as its number, as in <c>\u{1b}</c>.</summary>
    public static string Escape(string name) => string.Concat(name.EnumerateRunes().Select(Shown));

    private static string Shown(Rune rune) =>
        IsPlain(rune) ? rune.ToString() : string.Create(CultureInfo.InvariantCulture, $"\\u{{{rune.Value:x}}}");

    /// <summary>.NET puts the replacement character for bytes that are not UTF-8.</summary>
    private static bool IsPlain(Rune rune) =>
        rune != Rune.ReplacementChar
        && Rune.GetUnicodeCategory(rune)
            is not (
                UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
            );
}
