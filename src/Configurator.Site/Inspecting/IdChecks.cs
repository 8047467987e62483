using System.Collections.Immutable;
using AngleSharp.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>Ids are there once, and what elements say of each other by id is there at all.</summary>
internal static class IdChecks
{
    private static readonly ImmutableHashSet<string> Pointers =
    [
        "for",
        "headers",
        "list",
        "aria-controls",
        "aria-describedby",
        "aria-labelledby",
        "aria-owns",
    ];

    public static IEnumerable<Diagnostic> Check(HtmlPage page)
    {
        var byId = page
            .Elements.Where(element => element.HasAttribute("id"))
            .ToLookup(element => element.GetAttribute("id")!, StringComparer.Ordinal);
        return Duplicates(page, byId).Concat(page.Elements.SelectMany(element => Missing(page, element, byId)));
    }

    private static IEnumerable<Diagnostic> Duplicates(HtmlPage page, ILookup<string, IElement> byId) =>
        from alike in byId
        from element in alike.Skip(1)
        select InspectionDiagnostics.SameId(alike.Key, page.SpanOf(element), page.SpanOf(alike.First()));

    private static IEnumerable<Diagnostic> Missing(HtmlPage page, IElement element, ILookup<string, IElement> byId) =>
        from attribute in element.Attributes
        where Pointers.Contains(attribute.Name)
        from id in attribute.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        where !byId.Contains(id)
        select InspectionDiagnostics.NoId(attribute.Name, id, page.SpanOf(element));
}
