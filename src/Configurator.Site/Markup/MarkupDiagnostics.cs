using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Markup;

internal static class MarkupDiagnostics
{
    private const int ShownMax = 60;

    private static readonly Rule Beyond = new("CFG5101", Severity.Error, "Note too large or too deeply nested");
    private static readonly Rule Link = new("CFG5102", Severity.Warning, "Link refused");
    private static readonly Rule Html = new("CFG5103", Severity.Warning, "HTML in a note");

    internal static ImmutableArray<Rule> All { get; } = [Beyond, Link, Html];

    public static Diagnostic TooDeep(SourceSpan span) =>
        new(Beyond, "lists, quotes, brackets or emphasis are nested too deeply to be read", span)
        {
            Fix = new("write the note with a few levels of lists at most"),
        };

    public static Diagnostic TooLong(int length, int limit, SourceSpan span) =>
        new(Beyond, FormattableString.Invariant($"the note has {length} characters; {limit} is the limit"), span)
        {
            Fix = new("divide it, or keep it as a document of its own"),
        };

    public static Diagnostic TooManyCells(long cells, int limit, SourceSpan span) =>
        new(Beyond, FormattableString.Invariant($"the note's tables come to {cells} cells; {limit} is the limit"), span)
        {
            Fix = new("make the tables narrower or shorter"),
        };

    public static Diagnostic Refused(string target, bool isImage, string reason, SourceSpan span) =>
        new(Link, $"{(isImage ? "picture" : "link")} `{Shown(target)}` refused: {reason}", span)
        {
            Fix = new(
                isImage
                    ? "name a picture of the catalogue by a relative path"
                    : "use a relative path, `https://` or `mailto:`"
            ),
        };

    public static Diagnostic HasHtml(SourceSpan span) =>
        new(Html, "HTML is not read in notes; it is shown as text", span)
        {
            Fix = new("write it in Markdown, or in backticks if it is meant as text"),
        };

    /// <summary>On one line and short, whatever a hostile target is made of.</summary>
    private static string Shown(string target) =>
        string.Concat(
            (target.Length > ShownMax ? target[..ShownMax] + "…" : target).Select(character =>
                char.IsControl(character) || character == '`' ? '?' : character
            )
        );
}
