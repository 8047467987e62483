using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>WCAG 2.2: 2.4.2 pages have titles, 3.1.1 the language of a page is stated.</summary>
internal static class TitleChecks
{
    public static Located<string>? TitleOf(HtmlPage page) =>
        page.Document.Head?.QuerySelector("title") is { } title && !string.IsNullOrWhiteSpace(title.TextContent)
            ? new(page.Document.Title!, page.SpanOf(title))
            : null;

    public static IEnumerable<Diagnostic> Check(HtmlPage page)
    {
        if (TitleOf(page) is null)
        {
            yield return InspectionDiagnostics.NoTitle(page.Start);
        }

        if (string.IsNullOrWhiteSpace(page.Document.DocumentElement.GetAttribute("lang")))
        {
            yield return InspectionDiagnostics.NoLanguage(page.SpanOf(page.Document.DocumentElement));
        }
    }

    /// <summary>A title that two pages share tells nobody which of them is open.</summary>
    public static IEnumerable<Diagnostic> Unique(IEnumerable<PageFacts> pages) =>
        pages
            .Select(page => page.Title)
            .OfType<Located<string>>()
            .GroupBy(title => title.Value, StringComparer.Ordinal)
            .SelectMany(alike => alike.Skip(1).Select(title => InspectionDiagnostics.SameTitle(title, alike.First())));
}
