using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Inspecting;
using Configurator.Site.Tests.Rendering;

namespace Configurator.Site.Tests.Inspecting;

/// <summary>Small finished sites.</summary>
internal static class Finished
{
    /// <summary>A whole and sound page around a body.</summary>
    public static string Page(string body, string title = "Page") => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8"><title>{title}</title></head>
        <body>
        <h1>{title}</h1>
        {body}
        </body>
        </html>

        """;

    public static ImmutableArray<Diagnostic> Inspect(params IEnumerable<(string Path, string Text)> files) =>
        Inspector.Inspect(Files(files)).Diagnostics;

    public static SiteFiles Files(params IEnumerable<(string Path, string Text)> files) => SiteFiles.Of(files.Select(
        file => KeyValuePair.Create(file.Path, (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(file.Text))));

    /// <summary>Expects one diagnostic on <c>a/page.html</c> with this body, at the mark if there is one.</summary>
    public static Diagnostic Check(
        string body, string expected, params IEnumerable<(string Path, string Text)> others) =>
        CheckWhole(Page(body), expected, others);

    public static Diagnostic CheckWhole(
        string page, string expected, params IEnumerable<(string Path, string Text)> others)
    {
        var marked = Marked.Read("_site/a/page.html", page);
        var diagnostic = Assert.Single(Inspect([("a/page.html", marked.Text), .. others]));
        Assert.Equal(expected, $"{diagnostic.Rule.Code} {diagnostic.Message}");
        Assert.Equal(marked.Span ?? SourceSpan.FileStart("_site/a/page.html"), diagnostic.Span);
        return diagnostic;
    }

    /// <summary>Expects nothing on <c>a/page.html</c> with this body.</summary>
    public static void Accept(string body, params IEnumerable<(string Path, string Text)> others) =>
        Assert.Empty(
            Inspect([("a/page.html", Page(body)), .. others]).Select(it => $"{it.Span} {it.Rule.Code} {it.Message}"));
}
