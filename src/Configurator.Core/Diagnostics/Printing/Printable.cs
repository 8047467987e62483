using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>Text from a definition made harmless for a terminal and a build log.</summary>
internal static partial class Printable
{
    /// <summary>Control and bidirectional characters as escapes; the opening of a log command broken up.</summary>
    public static string Of(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = IsUnsafe(c) ? safe.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}") : safe.Append(c);
        }

        return CommandAnywhere().Replace(safe.ToString(), "# #${word}[");
    }

    /// <summary>The same, for a line of its own: it cannot start a log command, and its tabs keep their
    /// place.</summary>
    public static string Line(string text)
    {
        var line = Of(text.Replace('\t', ' '));
        var start = line.Length - line.TrimStart().Length;
        return line.AsSpan(start).StartsWith("::", StringComparison.Ordinal) ? line.Insert(start + 1, " ") : line;
    }

    private static bool IsUnsafe(char c) =>
        char.IsControl(c)
        || c is '\u2028' or '\u2029'
        || (c >= '\u202A' && c <= '\u202E')
        || (c >= '\u2066' && c <= '\u2069')
        || c is '\u200E' or '\u200F';

    /// <summary>Build logs take <c>##[name]</c> for a command wherever it stands, some of them with a word before the
    /// bracket.</summary>
    [GeneratedRegex("##(?<word>[A-Za-z]*)\\[", RegexOptions.NonBacktracking)]
    private static partial Regex CommandAnywhere();
}
