using AngleSharp.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>What the page's own content policy blocks, or what does not run from a folder.</summary>
internal static class InlineChecks
{
    public static IEnumerable<Diagnostic> Check(HtmlPage page) =>
        from element in page.Elements
        from what in Elements(element).Concat(element.Attributes.Select(it => Attribute(element, it)).OfType<string>())
        select InspectionDiagnostics.Inline(what, page.SpanOf(element));

    private static IEnumerable<string> Elements(IElement element)
    {
        if (IsModule(element))
        {
            yield return "a module script does not run when the page is opened from a folder";
        }

        if (element.LocalName == "script" && !element.HasAttribute("src"))
        {
            yield return "a script inside the page is blocked";
        }

        if (element.LocalName == "style")
        {
            yield return "a style sheet inside the page is blocked";
        }
    }

    private static string? Attribute(IElement element, IAttr attribute) =>
        attribute.Name switch
        {
            "style" => "a `style` attribute is blocked",
            "integrity" or "crossorigin" when element.LocalName is "script" or "link" =>
                $"`{attribute.Name}` keeps the file from loading when the page is opened from a folder",
            var name when name.StartsWith("on", StringComparison.OrdinalIgnoreCase) =>
                $"the event handler `{name}` is blocked",
            _ => null,
        };

    private static bool IsModule(IElement element) =>
        element.LocalName switch
        {
            "script" => element.GetAttribute("type") is "module" or "importmap",
            "link" => element.GetAttribute("rel") == "modulepreload",
            _ => false,
        };
}
