using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

/// <summary>Finds characters that change what a reviewer sees without being seen.</summary>
internal static class ControlCharacters
{
    /// <summary>The first such character of each line.</summary>
    public static IEnumerable<Diagnostic> In(SourceText source)
    {
        for (var line = 1; line <= source.LineCount; line++)
        {
            var text = source.Line(line);
            var index = FirstIn(text);
            if (index >= 0)
            {
                yield return LoadingDiagnostics.HasControl(text[index], new(source.Path, line, index + 1, 1));
            }
        }
    }

    /// <summary>The first such character of a value, where an escape gave one; null where there is none.</summary>
    public static char? InValue(string value)
    {
        var index = FirstIn(value.Replace('\n', ' '));
        return index < 0 ? null : value[index];
    }

    private static int FirstIn(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (IsRefused(text[i]))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>C0 but tab, DEL and C1, line and paragraph separators, a BOM inside, and the bidirectional overrides
    /// and isolates of Unicode UAX #9 (the plain left-to-right and right-to-left marks are text).</summary>
    private static bool IsRefused(char c) =>
        c
            is < ' '
                and not '\t'
                or (>= '\u007F' and <= '\u009F')
                or '\u2028'
                or '\u2029'
                or '\uFEFF'
                or '\uFFFE'
                or '\uFFFF'
                or (>= '\u202A' and <= '\u202E')
                or (>= '\u2066' and <= '\u2069');
}
