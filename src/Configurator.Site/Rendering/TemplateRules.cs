using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

/// <summary>
/// Finds what a template must not use: the engine would print it as text, or it would change the base page.
/// </summary>
internal static partial class TemplateRules
{
    public static IEnumerable<Diagnostic> Check(SourceText template)
    {
        var code = TemplateComments.Blank(template);
        for (var line = 1; line <= code.LineCount; line++)
        {
            foreach (Match match in Refused().Matches(code.Line(line)))
            {
                var used = match.Groups["used"];
                yield return RenderingDiagnostics.NotAllowed(
                    used.Value.Trim(),
                    new(template.Path, line, used.Index + 1, used.Value.TrimEnd().Length)
                );
            }
        }
    }

    [GeneratedRegex(
        """
            ^\s*(?<used>@(addTagHelper|removeTagHelper|tagHelperPrefix|inject|page|namespace)\b.*)
            |^\s*(?<used>@inherits\s+(?!(Configurator\.Site\.Rendering\.)?SitePage<TModel>\s*$).*)
            |(?<used><(vc:[\w-]+|partial|cache|distributed-cache|environment|component|persist-component-state)\b)
            |\s(?<used>asp-[\w-]+)\s*=
            """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Refused();
}
