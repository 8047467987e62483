using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Markup;
using Configurator.Site.Rendering;
using Configurator.Site.Tests.Rendering;

namespace Configurator.Site.Tests.Markup;

/// <summary>Prose from line 10 of a file, under a heading of level 2.</summary>
internal static class Note
{
    private const string Path = "options/lids/foil.md";

    public static Outcome<SafeHtml> Read(string markdown, int belowLevel = 2) =>
        MarkdownRenderer.Render(markdown, Path, firstLine: 10, belowLevel);

    /// <summary>The HTML of prose that raises nothing.</summary>
    public static string Html(string markdown, int belowLevel = 2)
    {
        var note = Read(markdown, belowLevel);
        Assert.Empty(note.Diagnostics);
        return note.Value.Html;
    }

    /// <summary>Expects one diagnostic, at the mark if there is one, and gives the HTML that remains.</summary>
    public static string Check(string markdown, string expected)
    {
        var marked = Marked.Read(Path, markdown, firstLine: 10);
        var note = Read(marked.Text);
        var diagnostic = Assert.Single(note.Diagnostics);
        Assert.Equal(expected, $"{diagnostic.Rule.Code} {diagnostic.Message}");
        Assert.Equal(marked.Span ?? new SourceSpan(Path, 10, 1, 0), diagnostic.Span);
        return note.Value.Html;
    }
}
