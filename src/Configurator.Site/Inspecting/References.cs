using System.Collections.Immutable;
using AngleSharp.Dom;

namespace Configurator.Site.Inspecting;

/// <summary>Gathers everything in a page that names another file.</summary>
internal static class References
{
    private static readonly ImmutableHashSet<string> Attributes =
    [
        "href",
        "xlink:href",
        "src",
        "data",
        "action",
        "formaction",
        "poster",
        "background",
        "manifest",
        "longdesc",
    ];

    private static readonly ImmutableHashSet<string> Pictures = ["img", "image", "input", "source", "feimage"];

    public static IEnumerable<Reference> In(HtmlPage page) => page.Elements.SelectMany(element => Of(element, page));

    private static IEnumerable<Reference> Of(IElement element, HtmlPage page)
    {
        foreach (var attribute in element.Attributes)
        {
            foreach (var (url, use) in Named(element, attribute))
            {
                yield return new(url, use, page.SpanOf(element));
            }
        }
    }

    private static IEnumerable<(string Url, ReferenceUse Use)> Named(IElement element, IAttr attribute) =>
        attribute.Name switch
        {
            "srcset" or "imagesrcset" => Candidates(attribute.Value).Select(url => (url, ReferenceUse.Picture)),
            "content" when IsRefresh(element) => Refresh(attribute.Value).Select(url => (url, ReferenceUse.Request)),
            "data" when element.LocalName != "object" => [],
            "ping" => [(attribute.Value, ReferenceUse.Request)],
            var name when Attributes.Contains(name) => [(attribute.Value, UseOf(element))],
            _ => [],
        };

    private static ReferenceUse UseOf(IElement element) =>
        element.LocalName switch
        {
            "a" or "area" => ReferenceUse.Link,
            "link" when element.GetAttribute("rel") == "canonical" => ReferenceUse.Link,
            var name when Pictures.Contains(name.ToLowerInvariant()) => ReferenceUse.Picture,
            _ => ReferenceUse.Request,
        };

    private static IEnumerable<string> Candidates(string srcset) =>
        srcset
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(candidate => candidate.Split(' ')[0]);

    /// <summary>HTML Living Standard, meta http-equiv: a delay, then the target after <c>url=</c>.</summary>
    private static IEnumerable<string> Refresh(string content)
    {
        var at = content.IndexOf("url", StringComparison.OrdinalIgnoreCase);
        return at < 0 ? [] : [content[(at + 3)..].TrimStart(' ', '=').Trim('"', '\'', ' ')];
    }

    private static bool IsRefresh(IElement element) =>
        element.LocalName == "meta"
        && string.Equals(element.GetAttribute("http-equiv"), "refresh", StringComparison.OrdinalIgnoreCase);
}
