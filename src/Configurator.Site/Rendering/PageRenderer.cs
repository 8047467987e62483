using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.Encodings.Web;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using RazorLight;
using RazorLight.Internal.Buffering;

namespace Configurator.Site.Rendering;

/// <summary>Makes pages from templates and page records. One renderer may be used from many threads.</summary>
internal sealed class PageRenderer
{
    private readonly TemplateProject _project;
    private readonly TemplateCompiler _compiler;
    private readonly EngineHandler _handler;

    /// <param name="templates">The catalogue's templates over the defaults.</param>
    /// <param name="models">Assemblies, besides our own, whose public types templates may name.</param>
    public PageRenderer(TemplateSet templates, params ImmutableArray<Assembly> models)
        : this(templates, null, models) { }

    /// <param name="templates">The catalogue's templates over the defaults.</param>
    /// <param name="store">Keeps compiled templates from one run to the next; null keeps none.</param>
    /// <param name="models">Assemblies, besides our own, whose public types templates may name.</param>
    public PageRenderer(TemplateSet templates, ITemplateStore? store, ImmutableArray<Assembly> models)
    {
        _project = new(templates);
        _compiler = new(_project, models, store);
        _handler = new(new RazorLightOptions(), _compiler, _compiler, cache: null);
    }

    /// <summary>Compiles every template, used or not, and follows the names that they give each other.</summary>
    public ImmutableArray<Diagnostic> CheckAll() =>
        Once([
            .. _project.ImportTexts.SelectMany(TemplateRules.Check),
            .. _project.PageKeys.SelectMany(key => _compiler.Check(key)),
            .. _project
                .Calls.Where(call => !_project.Has(call.Key))
                .Select(call => RenderingDiagnostics.Missing(call.Key, call.Span)),
        ]);

    /// <summary>Makes all pages, in parallel, after <see cref="CheckAll"/>. A page that failed is left out.</summary>
    public Outcome<SiteFiles> RenderAll(ImmutableArray<PageJob> jobs)
    {
        var checks = CheckAll();
        var pages = new Outcome<RenderedPage>[jobs.Length];
        Parallel.For(0, jobs.Length, i => pages[i] = Render(jobs[i]));
        var files = jobs.Zip(pages)
            .Where(page => !page.Second.HasErrors)
            .Select(page => KeyValuePair.Create(page.First.Path, page.Second.Value.Utf8));
        return new(SiteFiles.Of(files), Once([.. checks, .. pages.SelectMany(page => page.Diagnostics)]));
    }

    public Outcome<RenderedPage> Render(string templateKey, object? model)
    {
        using var buffers = new MemoryPoolViewBufferScope();
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        try
        {
            var host = new PageHost(_project, _handler, new TemplateRenderer(_handler, HtmlEncoder.Default, buffers));
            new SitePageContext(host, templateKey, writer).RenderAsync(model).GetAwaiter().GetResult();
            return new(new RenderedPage(writer.ToString()));
        }
        catch (TemplateFailure failure)
        {
            return new(RenderedPage.Empty, failure.Diagnostics);
        }
#pragma warning disable CA1031 // A template is the user's code and may throw anything.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return new(RenderedPage.Empty, [Explain(templateKey, exception)]);
        }
    }

    private Outcome<RenderedPage> Render(PageJob job)
    {
        var page = Render(job.TemplateKey, job.Model);
        return page with { Diagnostics = [.. page.Diagnostics.Select(it => RenderingDiagnostics.While(job.Path, it))] };
    }

    /// <summary>A template that fails for many pages is one mistake; the first page stands for all.</summary>
    private static ImmutableArray<Diagnostic> Once(IEnumerable<Diagnostic> diagnostics) =>
        [.. Diagnostic.InOrder(diagnostics).DistinctBy(it => (it.Span, it.Rule, it.Message))];

    private Diagnostic Explain(string key, Exception exception) =>
        IsLayoutCycle(exception)
            ? RenderingDiagnostics.LayoutCycle(key, LayoutPlace(key))
            : RenderingDiagnostics.Threw(key, exception, FailurePlace.Of(exception, key, _project));

    /// <summary>The engine has no type of its own for this; a test holds that it still says it so.</summary>
    private static bool IsLayoutCycle(Exception exception) =>
        exception is InvalidOperationException
        && exception.Message.EndsWith("has circular reference", StringComparison.Ordinal);

    private SourceSpan LayoutPlace(string key) =>
        _project.Calls.FirstOrDefault(call => call.IsLayout && call.Span.Path == TemplateKey.PathOf(key))?.Span
        ?? SourceSpan.FileStart(TemplateKey.PathOf(key));
}
