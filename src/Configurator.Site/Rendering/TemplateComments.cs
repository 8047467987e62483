using System.Text.RegularExpressions;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

internal static partial class TemplateComments
{
    /// <summary>
    /// The template with its Razor and HTML comments as blanks, so that every place stays where it was.
    /// </summary>
    public static SourceText Blank(SourceText template) => new(template.Path, Comment().Replace(template.Text, Blanks));

    private static string Blanks(Match comment) =>
        string.Concat(comment.Value.Select(character => character == '\n' ? '\n' : ' '));

    [GeneratedRegex(@"@\*.*?\*@|<!--.*?-->", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex Comment();
}
