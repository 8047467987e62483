using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>Follows every name of another file, within the site and out of it.</summary>
internal static class LinkChecks
{
    public static IEnumerable<Diagnostic> Check(PageFacts page, IReadOnlyDictionary<string, PageFacts> site) =>
        page.References.Select(reference => Check(reference, page.Path, site)).OfType<Diagnostic>();

    private static Diagnostic? Check(Reference reference, string from, IReadOnlyDictionary<string, PageFacts> site)
    {
        var url = reference.Url;
        return url.IsWithin ? CheckWithin(reference, from, site)
            : MayLeave(reference, url.Scheme) ? null
            : reference.Use == ReferenceUse.Link ? InspectionDiagnostics.BadScheme(reference)
            : InspectionDiagnostics.Outside(reference);
    }

    private static bool MayLeave(Reference reference, string scheme) =>
        reference.Use switch
        {
            ReferenceUse.Link => scheme is "https" or "mailto" or "tel",
            ReferenceUse.Picture => scheme == "data"
                && reference.Url.Path.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase),
            _ => false,
        };

    private static Diagnostic? CheckWithin(
        Reference reference,
        string from,
        IReadOnlyDictionary<string, PageFacts> site
    )
    {
        var url = reference.Url;
        if (url.IsRooted)
        {
            return InspectionDiagnostics.Rooted(reference);
        }

        if (url.Path.Length == 0 && url.Fragment is null)
        {
            return InspectionDiagnostics.LeadsNowhere(reference);
        }

        if (SitePath.Resolve(from, url.Path) is not { } target)
        {
            return InspectionDiagnostics.LeavesSite(reference);
        }

        return site.TryGetValue(target, out var page) ? CheckPlace(reference, page)
            : IsFolder(target, site) ? InspectionDiagnostics.Folder(reference)
            : InspectionDiagnostics.NoFile(reference, target, OtherCase(target, site));
    }

    private static bool IsFolder(string target, IReadOnlyDictionary<string, PageFacts> site) =>
        target.EndsWith('/') || site.ContainsKey(target + "/index.html");

    private static string? OtherCase(string target, IReadOnlyDictionary<string, PageFacts> site) =>
        site.ContainsKey(target.ToLowerInvariant()) ? target.ToLowerInvariant() : null;

    /// <summary>HTML Living Standard, 7.4.6.3: an empty fragment and <c>top</c> are the top of every page.</summary>
    private static Diagnostic? CheckPlace(Reference reference, PageFacts page) =>
        SitePath.IsHtml(page.Path)
        && reference.Url.NamesPlace
        && !page.Ids.Contains(reference.Url.Fragment!)
        && !string.Equals(reference.Url.Fragment, "top", StringComparison.OrdinalIgnoreCase)
            ? InspectionDiagnostics.NoPlace(reference, page.Path)
            : null;
}
