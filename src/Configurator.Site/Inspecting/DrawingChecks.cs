using AngleSharp.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>A drawing that somebody opens by itself is a page: it must not act.</summary>
internal static class DrawingChecks
{
    public static IEnumerable<Diagnostic> Check(HtmlPage drawing) =>
        Declares(drawing)
            .Concat(
                from element in drawing.Elements
                where IsActive(element)
                select InspectionDiagnostics.ActiveDrawing(element.LocalName, drawing.SpanOf(element))
            );

    /// <summary>A document type can define entities, behind which anything may hide.</summary>
    private static IEnumerable<Diagnostic> Declares(HtmlPage drawing) =>
        drawing.Text.Text.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase)
        || drawing.Text.Text.Contains("<!ENTITY", StringComparison.OrdinalIgnoreCase)
            ? [InspectionDiagnostics.ActiveDrawing("!DOCTYPE", drawing.Start)]
            : [];

    private static bool IsActive(IElement element) =>
        element.LocalName.Split(':')[^1].ToLowerInvariant() is "script" or "foreignobject" or "iframe" or "handler"
        || element.Attributes.Any(it => it.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase));
}
