using System.Dynamic;
using RazorLight;

namespace Configurator.Site.Rendering;

/// <summary>What a page is written with: the templates, how to make one, and how to write it.</summary>
internal sealed record PageHost(TemplateProject Project, IEngineHandler Templates, TemplateRenderer Renderer);

/// <summary>Where a page stands while it is written: its template, and how many includes led to it.</summary>
internal sealed class SitePageContext : PageContext
{
    /// <summary>Deeper than any real page. A template that includes itself would otherwise end the process.</summary>
    public const int IncludesMax = 64;

    private readonly PageHost _host;
    private readonly ExpandoObject _bag;
    private readonly int _depth;

    public SitePageContext(PageHost host, string key, TextWriter writer)
        : this(host, new ExpandoObject(), key, writer, depth: 0) { }

    private SitePageContext(PageHost host, ExpandoObject bag, string key, TextWriter writer, int depth)
        : base(bag)
    {
        _host = host;
        _bag = bag;
        _depth = depth;
        ExecutingPageKey = key;
        Writer = writer;
    }

    public async Task RenderAsync(object? model)
    {
        var page = await _host.Templates.CompileTemplateAsync(ExecutingPageKey);
        page.SetModel(model);
        Model = model;
        page.PageContext = this;
        await _host.Renderer.RenderAsync(page);
    }

    public Task IncludeAsync(string key, object? model, string path, int line)
    {
        var project = _host.Project;
        if (!project.Has(key))
        {
            var place = project.PlaceOf(key) ?? project.LineOf(path, line);
            throw new TemplateFailure(RenderingDiagnostics.Missing(key, place));
        }

        return _depth < IncludesMax
            ? new SitePageContext(_host, _bag, key, Writer, _depth + 1).RenderAsync(model)
            : throw new TemplateFailure(RenderingDiagnostics.TooDeep(key, IncludesMax, project.LineOf(path, line)));
    }
}
