using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Configurator.Site.Inspecting;

/// <summary>Paths within the site: what they may look like and how links between files are followed.</summary>
internal static partial class SitePath
{
    public const string Sums = "SHA256SUMS";

    private static readonly ImmutableHashSet<string> Endings =
    [
        "html",
        "css",
        "js",
        "json",
        "csv",
        "xlsx",
        "st",
        "svg",
        "png",
        "txt",
        "yaml",
        "webmanifest",
    ];

    /// <summary>As it stands in messages, where the site is one folder beside the definitions.</summary>
    public static string Shown(string path) => "_site/" + path;

    public static bool IsHtml(string path) => path.EndsWith(".html", StringComparison.Ordinal);

    public static bool IsCss(string path) => path.EndsWith(".css", StringComparison.Ordinal);

    public static bool IsSvg(string path) => path.EndsWith(".svg", StringComparison.Ordinal);

    public static string AllowedEndings => string.Join(", ", Endings.Order(StringComparer.Ordinal));

    /// <summary>Whether the path can be written and linked to on every system and host.</summary>
    public static bool IsSound(string path) => path == Sums || (Form().IsMatch(path) && !path.Split('/').Any(IsDevice));

    public static bool HasAllowedEnding(string path) =>
        path == Sums || (path.LastIndexOf('.') is > 0 and var dot && Endings.Contains(path[(dot + 1)..]));

    /// <summary>Where a relative link leads, or null where it leaves the site.</summary>
    /// <param name="from">The file with the link.</param>
    /// <param name="link">Its path part, decoded. An empty one leads to the file itself.</param>
    public static string? Resolve(string from, string link)
    {
        if (link.Length == 0)
        {
            return from;
        }

        var steps = new List<string>(from.Split('/')[..^1]);
        var parts = link.Split('/');
        foreach (var part in parts)
        {
            if (part == ".." && steps.Count == 0)
            {
                return null;
            }

            if (part == "..")
            {
                steps.RemoveAt(steps.Count - 1);
            }
            else if (part is not ("" or "."))
            {
                steps.Add(part);
            }
        }

        var path = string.Join('/', steps);
        return parts[^1] is "" or "." or ".." ? path + "/" : path;
    }

    /// <summary>Names that one system keeps for devices, with any ending.</summary>
    private static bool IsDevice(string step) => Device().IsMatch(step);

    [GeneratedRegex(
        @"^[a-z0-9][a-z0-9.-]*(/[a-z0-9][a-z0-9.-]*)*$",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Form();

    [GeneratedRegex(
        @"^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Device();
}
