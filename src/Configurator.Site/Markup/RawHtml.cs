using Configurator.Core.Diagnostics;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Configurator.Site.Markup;

/// <summary>Finds HTML in a note. It is shown as the text it is, which its writer should know.</summary>
internal static class RawHtml
{
    /// <summary>The same language with HTML on: only to see where there is any.</summary>
    private static readonly MarkdownPipeline WithHtml = new MarkdownPipelineBuilder()
        .UsePreciseSourceLocation()
        .UsePipeTables()
        .UseDefinitionLists()
        .Build();

    public static IEnumerable<Diagnostic> Find(Prose prose) =>
        prose.Text.Text.Contains('<', StringComparison.Ordinal)
            ? Markdown
                .Parse(prose.Text.Text, WithHtml)
                .Descendants()
                .Where(part => part is HtmlBlock or HtmlInline)
                .Select(prose.SpanOf)
                .DistinctBy(span => span.Line)
                .Select(MarkupDiagnostics.HasHtml)
            : [];
}
