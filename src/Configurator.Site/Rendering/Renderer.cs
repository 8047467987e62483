using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;
using Configurator.Core.Sources;
using Configurator.Site.Markup;

namespace Configurator.Site.Rendering;

/// <summary>Sixth stage: page records to pages, with the catalogue's templates over the tool's own.</summary>
public static class Renderer
{
    private const string Folder = "site-templates/";
    private const string AssetFolder = "site-templates/assets/";

    /// <param name="store">Keeps compiled templates from one run to the next; null keeps none.</param>
    public static Outcome<SiteFiles> Render(SiteDocuments documents, ITemplateStore? store = null)
    {
        var catalogue = documents.Engineered.Catalogue;
        var pages = RendererOf(catalogue, store)
            .RenderAll([.. documents.Pages.Select(page => new PageJob(page.Path, page.Template, page))]);
        return new(
            pages.Value.With(Assets(catalogue.Assets)).With(documents.TextFiles.Select(Bytes)),
            [.. CheckProse(catalogue), .. pages.Diagnostics]
        );
    }

    private static KeyValuePair<string, ReadOnlyMemory<byte>> Bytes(TextFile file) =>
        new(file.Path, Encoding.UTF8.GetBytes(file.Text));

    /// <summary>What is wrong with templates and prose, without making pages.</summary>
    public static Outcome<SiteFiles> Check(Catalogue catalogue, ITemplateStore? store = null) =>
        new(SiteFiles.Empty, [.. CheckProse(catalogue), .. RendererOf(catalogue, store).CheckAll()]);

    private static PageRenderer RendererOf(Catalogue catalogue, ITemplateStore? store)
    {
        var own = catalogue.Templates.Where(template => template.Path.StartsWith(Folder, StringComparison.Ordinal));
        return new(TemplateSet.Of(own).Over(DefaultTemplates.Load()), store, [typeof(Page).Assembly]);
    }

    /// <summary>What cannot be shown of the prose, once for each piece however many pages carry it.</summary>
    public static ImmutableArray<Diagnostic> CheckProse(Catalogue catalogue) =>
        [.. Passages(catalogue).AsParallel().AsOrdered().SelectMany(passage => ProseOf(passage).Diagnostics)];

    private static IEnumerable<Passage> Passages(Catalogue catalogue) =>
        catalogue
            .Options.Values.SelectMany(option => option.Notes.Sections)
            .Concat(catalogue.Devices.Values.SelectMany(device => device.Notes.Sections))
            .Select(note => new Passage(note.Markdown, note.Span, BelowLevel: 2))
            .Concat(
                catalogue
                    .Machines.Values.Select(machine => machine.About)
                    .OfType<SourceText>()
                    .Select(about => new Passage(about.Text, SourceSpan.FileStart(about.Path), BelowLevel: 2))
            );

    public static Outcome<SafeHtml> ProseOf(Passage passage) =>
        MarkdownRenderer.Render(passage.Markdown, passage.Span.Path, passage.Span.Line, passage.BelowLevel);

    private static IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> Assets(ImmutableArray<SourceFile> own) =>
        DefaultTemplates
            .Assets()
            .SetItems(
                own.Where(file => file.Path.StartsWith(AssetFolder, StringComparison.Ordinal))
                    .Select(file => KeyValuePair.Create(file.Path[AssetFolder.Length..], file.Bytes))
            )
            .Select(asset => KeyValuePair.Create("assets/" + asset.Key, asset.Value));
}
