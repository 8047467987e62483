using System.Collections.Immutable;
using AngleSharp.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>WCAG 2.2: 1.1.1 pictures have a text, 4.1.2 controls have a name.</summary>
internal static class NameChecks
{
    private static readonly ImmutableHashSet<string> Unlabelled = ["hidden", "submit", "reset", "button", "image"];

    public static IEnumerable<Diagnostic> Check(HtmlPage page)
    {
        ImmutableHashSet<string> labelled =
        [
            .. page.Document.QuerySelectorAll("label[for]").Select(label => label.GetAttribute("for")!),
        ];
        return page.Elements.SelectMany(element =>
            Check(element, labelled).Select(what => InspectionDiagnostics.NoName(what, page.SpanOf(element)))
        );
    }

    private static IEnumerable<string> Check(IElement element, ImmutableHashSet<string> labelled)
    {
        if (IsPicture(element) && !element.HasAttribute("alt"))
        {
            yield return $"`{element.LocalName}` has no `alt`";
        }
        else if (IsDrawing(element) && !HasOwnName(element) && element.QuerySelector("title") is null)
        {
            yield return "`svg` with the role `img` has no name";
        }
        else if (IsControl(element) && !IsLabelled(element, labelled))
        {
            yield return $"`{element.LocalName}` has no label";
        }
        else if (element.LocalName == "button" && !HasOwnName(element) && !HasWords(element))
        {
            yield return "`button` has no words";
        }
        else if (element.LocalName == "iframe" && !HasText(element, "title"))
        {
            yield return "`iframe` has no `title`";
        }
    }

    private static bool IsPicture(IElement element) =>
        element.LocalName switch
        {
            "img" => true,
            "area" => element.HasAttribute("href"),
            "input" => element.GetAttribute("type") == "image",
            _ => false,
        };

    private static bool IsDrawing(IElement element) =>
        element.LocalName == "svg" && element.GetAttribute("role") == "img";

    private static bool IsControl(IElement element) =>
        element.LocalName switch
        {
            "input" => !Unlabelled.Contains(element.GetAttribute("type")?.ToLowerInvariant() ?? "text"),
            "select" or "textarea" or "meter" or "progress" => true,
            _ => false,
        };

    private static bool IsLabelled(IElement control, ImmutableHashSet<string> labelled) =>
        HasOwnName(control)
        || (control.GetAttribute("id") is { } id && labelled.Contains(id))
        || control.Closest("label") is not null;

    private static bool HasOwnName(IElement element) =>
        HasText(element, "aria-label") || HasText(element, "aria-labelledby");

    private static bool HasWords(IElement button) =>
        !string.IsNullOrWhiteSpace(button.TextContent)
        || button
            .QuerySelectorAll("img[alt],svg[aria-label]")
            .Any(it => HasText(it, "alt") || HasText(it, "aria-label"));

    private static bool HasText(IElement element, string attribute) =>
        !string.IsNullOrWhiteSpace(element.GetAttribute(attribute));
}
