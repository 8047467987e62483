using Configurator.Core.Diagnostics;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Configurator.Site.Markup;

/// <summary>Takes refused links and pictures out of a note and leaves their words.</summary>
internal static class LinkRefusal
{
    public static IEnumerable<Diagnostic> Apply(MarkdownDocument document, Prose prose)
    {
        foreach (var inline in document.Descendants<Inline>().ToArray())
        {
            if (TargetOf(inline) is not { } target)
            {
                continue;
            }

            var isImage = inline is LinkInline { IsImage: true };
            if (LinkPolicy.Refusal(target, isImage) is { } reason)
            {
                inline.ReplaceBy(WordsOf(inline), copyChildren: true);
                yield return MarkupDiagnostics.Refused(target, isImage, reason, prose.SpanOf(inline));
            }
        }
    }

    private static string? TargetOf(Inline inline) =>
        inline switch
        {
            LinkInline link => link.Url ?? "",
            AutolinkInline { IsEmail: false } link => link.Url,
            _ => null,
        };

    private static Inline WordsOf(Inline inline) =>
        inline is AutolinkInline link ? new LiteralInline(link.Url) : new ContainerInline();
}
