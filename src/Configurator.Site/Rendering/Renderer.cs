using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Sources;
using Configurator.Site.Markup;

namespace Configurator.Site.Rendering;

/// <summary>Sixth stage: page records to pages, with the catalogue's templates over the tool's own.</summary>
public static class Renderer
{
    private const string Folder = "site-templates/";
    private const string AssetFolder = "site-templates/assets/";

    public static Outcome<SiteFiles> Render(SiteDocuments documents)
    {
        var catalogue = documents.Engineered.Catalogue;
        var own = catalogue.Templates.Where(template => template.Path.StartsWith(Folder, StringComparison.Ordinal));
        var renderer = new PageRenderer(TemplateSet.Of(own).Over(DefaultTemplates.Load()), typeof(Page).Assembly);
        var pages = renderer.RenderAll([.. documents.Pages.Select(page => new PageJob(page.Path, page.Template, page))]);
        return new(pages.Value.With(Assets(catalogue.Assets)), [.. CheckProse(documents.Pages), .. pages.Diagnostics]);
    }

    /// <summary>What cannot be shown of the prose, once for each piece however many pages carry it.</summary>
    private static IEnumerable<Diagnostic> CheckProse(ImmutableArray<Page> pages) => pages
        .SelectMany(page => page.Sections)
        .SelectMany(section => section.Blocks)
        .SelectMany(PassagesIn)
        .DistinctBy(passage => passage.Span)
        .AsParallel().AsOrdered()
        .SelectMany(passage => ProseOf(passage).Diagnostics);

    public static Outcome<SafeHtml> ProseOf(Passage passage) =>
        MarkdownRenderer.Render(passage.Markdown, passage.Span.Path, passage.Span.Line, passage.BelowLevel);

    private static IEnumerable<Passage> PassagesIn(Block block) => block switch
    {
        Passage passage => [passage],
        Steps steps => steps.Items.SelectMany(step => step.Additions).Select(addition => addition.Passage),
        _ => [],
    };

    private static IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> Assets(ImmutableArray<SourceFile> own) => DefaultTemplates.Assets()
        .SetItems(own.Where(file => file.Path.StartsWith(AssetFolder, StringComparison.Ordinal))
            .Select(file => KeyValuePair.Create(file.Path[AssetFolder.Length..], file.Bytes)))
        .Select(asset => KeyValuePair.Create("assets/" + asset.Key, asset.Value));
}
