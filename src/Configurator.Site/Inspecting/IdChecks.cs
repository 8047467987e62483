using System.Collections.Immutable;
using AngleSharp.Dom;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>Ids are there once, and what elements say of each other by id is there at all.</summary>
internal static class IdChecks
{
    private static readonly ImmutableArray<string> Pointers =
        ["for", "headers", "list", "aria-controls", "aria-describedby", "aria-labelledby", "aria-owns"];

    public static IEnumerable<Diagnostic> Check(HtmlPage page)
    {
        var byId = page.Document.All.Where(element => element.HasAttribute("id")).ToLookup(
            element => element.GetAttribute("id")!, StringComparer.Ordinal);
        return Duplicates(page, byId).Concat(page.Document.All.SelectMany(element => Missing(page, element, byId)));
    }

    private static IEnumerable<Diagnostic> Duplicates(HtmlPage page, ILookup<string, IElement> byId) =>
        byId.SelectMany(alike => alike.Skip(1)
            .Select(
                element => InspectionDiagnostics.SameId(alike.Key, page.SpanOf(element), page.SpanOf(alike.First()))));

    private static IEnumerable<Diagnostic> Missing(HtmlPage page, IElement element, ILookup<string, IElement> byId) =>
        from attribute in Pointers
        from id in (element.GetAttribute(attribute) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)
        where !byId.Contains(id)
        select InspectionDiagnostics.NoId(attribute, id, page.SpanOf(element));
}
