using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

/// <summary>
/// Small sets of templates. The page under test is <c>Page.cshtml</c> and formats a <see cref="Crate"/>.
/// </summary>
internal static class Pages
{
    public static Crate Crate { get; } = new("Lid sensor", 350, [new("X1"), new("X2")], null);

    public static PageRenderer Renderer(params IEnumerable<(string Key, string Text)> templates) =>
        new(Templates(templates), typeof(Crate).Assembly);

    public static TemplateSet Templates(params IEnumerable<(string Key, string Text)> templates) => TemplateSet
        .Of(templates.Select(template => new SourceText("site-templates/" + template.Key, template.Text)))
        .Over(TemplateSet.Of([new("_ViewImports.cshtml", "@using Configurator.Site.Tests.Rendering\n")]));

    /// <summary>The page as it is made from the templates, which must raise nothing.</summary>
    public static string Html(object? model, params IEnumerable<(string Key, string Text)> templates)
    {
        var page = Renderer(templates).Render("Page.cshtml", model);
        Assert.Empty(page.Diagnostics);
        return page.Value.Html;
    }

    /// <summary>Makes the page and expects one diagnostic, at the mark if there is one.</summary>
    public static Diagnostic Check(string expected, params (string Key, string Text)[] templates)
    {
        Marked[] marked = [.. templates.Select(it => Marked.Read("site-templates/" + it.Key, it.Text))];
        var outcome = Renderer(templates.Zip(marked, (template, text) => (template.Key, text.Text)))
            .RenderAll([new("index.html", "Page.cshtml", Crate)]);
        var diagnostic = Assert.Single(outcome.Diagnostics);
        Assert.Equal(expected, $"{diagnostic.Rule.Code} {diagnostic.Message}");
        if (marked.Select(it => it.Span).OfType<SourceSpan>().ToArray() is [var span])
        {
            Assert.Equal(span, diagnostic.Span);
        }

        return diagnostic;
    }
}
