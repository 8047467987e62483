using System.Globalization;
using System.Text.RegularExpressions;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>Gathers everything in a style sheet that names another file.</summary>
internal static partial class CssReferences
{
    public static IEnumerable<Reference> In(SourceText sheet)
    {
        var plain = Escape().Replace(Comment().Replace(sheet.Text, Blanks), Decoded);
        var lines = new SourceText(sheet.Path, plain);
        for (var line = 1; line <= lines.LineCount; line++)
        {
            foreach (Match match in Named().Matches(lines.Line(line)))
            {
                var url = match.Groups["url"];
                var use = match.Groups["import"].Success ? ReferenceUse.Request : ReferenceUse.Picture;
                yield return new(url.Value, use, new(sheet.Path, line, match.Index + 1, match.Length));
            }
        }
    }

    private static string Blanks(Match comment) =>
        string.Concat(comment.Value.Select(character => character == '\n' ? '\n' : ' '));

    /// <summary>So that <c>\75rl(</c> is seen as the <c>url(</c> that a browser sees.</summary>
    private static string Decoded(Match escape)
    {
        var code = int.Parse(escape.Groups["code"].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return code is > 0x20 and < 0x7F ? ((char)code).ToString() : " ";
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\\(?<code>[0-9a-fA-F]{1,6})[ \t]?", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Escape();

    [GeneratedRegex(
        """
            (?<import>@import\s+(url\(\s*)?)["']?(?<url>[^"'()\s;]+)
            |\b(url|src)\(\s*["']?(?<url>[^"'()]*)
            |\b(-webkit-)?(image-set|image)\(\s*["'](?<url>[^"'()]*)
            """,
        RegexOptions.IgnorePatternWhitespace
            | RegexOptions.IgnoreCase
            | RegexOptions.NonBacktracking
            | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Named();
}
