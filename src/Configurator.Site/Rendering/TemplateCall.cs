using System.Text.RegularExpressions;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

/// <summary>A place where a template names another one: an include or a layout.</summary>
/// <param name="Key">The other template.</param>
/// <param name="IsLayout">Whether it is put around the template, not into it.</param>
/// <param name="Span">Where its name stands, without the quotes.</param>
internal sealed partial record TemplateCall(string Key, bool IsLayout, SourceSpan Span)
{
    /// <summary>Names that are written out. One that is computed shows only when the page is made.</summary>
    public static IEnumerable<TemplateCall> In(SourceText template)
    {
        var code = TemplateComments.Blank(template);
        for (var line = 1; line <= code.LineCount; line++)
        {
            foreach (Match match in Call().Matches(code.Line(line)))
            {
                var key = match.Groups["key"];
                yield return new(
                    key.Value,
                    match.Groups["layout"].Success,
                    new(template.Path, line, key.Index + 1, key.Length)
                );
            }
        }
    }

    [GeneratedRegex(
        """(\bIncludeAsync\s*\(|(?<layout>\bLayout)\s*=)\s*"(?<key>[^"{}\\]+)"\s*[;,)}]""",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Call();
}
