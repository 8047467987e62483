using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>Looks through published pages as a browser reads them.</summary>
internal static class HarmlessSite
{
    private static readonly string[] Schemes = ["", "https", "mailto"];

    public static void Check(string site)
    {
        var pages = Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories).ToList();
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Check(new HtmlParser().ParseDocument(File.ReadAllText(page))));
    }

    private static void Check(IDocument page)
    {
        foreach (var element in page.All)
        {
            Assert.DoesNotContain(element.Attributes, attribute => attribute.Name.StartsWith("on", StringComparison.Ordinal));
            Assert.False(element.LocalName is "iframe" or "object" or "embed" or "base" or "form", element.OuterHtml);
            Assert.False(element.LocalName == "script" && element.TextContent.Length > 0, element.OuterHtml);
            Assert.Contains(Scheme(element.GetAttribute("href")), Schemes, StringComparer.Ordinal);
            Assert.Equal("", Scheme(element.GetAttribute("src")));
        }
    }

    /// <summary>As a browser takes it: blanks and controls inside a scheme do not count.</summary>
    private static string Scheme(string? target)
    {
        var tight = string.Concat((target ?? "").Where(character => character > ' '));
        var colon = tight.IndexOf(':', StringComparison.Ordinal);
        var end = tight.IndexOfAny(['/', '?', '#']);
        return colon < 0 || (end >= 0 && end < colon) ? "" : tight[..colon].ToLowerInvariant();
    }
}
