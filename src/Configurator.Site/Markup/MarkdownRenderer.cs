using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Rendering;
using Markdig;

namespace Configurator.Site.Markup;

/// <summary>Prose from the catalogue to HTML that is safe to write into any page.</summary>
internal static class MarkdownRenderer
{
    /// <summary>Raw HTML is off, and of the extensions only those that cannot set attributes are on.</summary>
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePreciseSourceLocation()
        .UsePipeTables()
        .UseDefinitionLists()
        .DisableHtml()
        .Build();

    /// <summary>Makes one piece of prose. What cannot be shown as written is reported at its place.</summary>
    /// <param name="markdown">The piece: a whole file or the text under one heading.</param>
    /// <param name="path">The file it comes from.</param>
    /// <param name="firstLine">The line of the file on which the piece starts, from 1.</param>
    /// <param name="belowLevel">The level of the heading under which the piece will stand, 1 to 5.</param>
    public static Outcome<SafeHtml> Render(string markdown, string path, int firstLine, int belowLevel)
    {
        var prose = new Prose(new SourceText(path, markdown), firstLine);
        if (MarkupLimits.Check(prose) is { } beyond)
        {
            return new(SafeHtml.Empty, [beyond]);
        }

        try
        {
            return Render(prose, belowLevel);
        }
        catch (ArgumentException tooDeep) when (tooDeep.Message.Contains("too deeply nested", StringComparison.Ordinal))
        {
            return new(SafeHtml.Empty, [MarkupDiagnostics.TooDeep(prose.Start)]);
        }
    }

    private static Outcome<SafeHtml> Render(Prose prose, int belowLevel)
    {
        var document = Markdown.Parse(prose.Text.Text, Pipeline);
        ImmutableArray<Diagnostic> refused = [.. LinkRefusal.Apply(document, prose), .. RawHtml.Find(prose)];
        HeadingNesting.Apply(document, belowLevel);
        TableHeads.Apply(document);
        var html = Sanitiser.Clean(document.ToHtml(Pipeline));
        return new(html, [.. Diagnostic.InOrder(refused)]);
    }
}
