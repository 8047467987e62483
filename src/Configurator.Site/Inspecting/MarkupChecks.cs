using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>
/// What a browser would silently put right. The first mistake of a page makes the others, so it stands alone.
/// </summary>
internal static class MarkupChecks
{
    public static IEnumerable<Diagnostic> Check(HtmlPage page) =>
        page.Errors.Select(error => InspectionDiagnostics.Malformed(error.Message, error.Span)).Take(1);
}
