using AngleSharp;
using AngleSharp.Html;
using Configurator.Site.Rendering;
using Ganss.Xss;

namespace Configurator.Site.Markup;

/// <summary>Lets through only what a note needs. The one place that makes <see cref="SafeHtml"/>.</summary>
internal static class Sanitiser
{
    private static readonly HtmlSanitizer Rules = Create();

    public static SafeHtml Clean(string html)
    {
        using var document = Rules.SanitizeDom(html);
        var body = document.Body!;
        TableCaptions.Apply(body);
        return new(body.ChildNodes.ToHtml(HtmlMarkupFormatter.Instance));
    }

    private static HtmlSanitizer Create()
    {
        var rules = new HtmlSanitizer(
            new HtmlSanitizerOptions
            {
                AllowedTags = Names(
                    "p h1 h2 h3 h4 h5 h6 ul ol li table caption thead tbody tfoot tr th td code pre em strong a img br hr "
                        + "sub sup dl dt dd blockquote"
                ),
                AllowedAttributes = Names("href title src alt colspan rowspan scope start"),
                UriAttributes = Names("href src"),
                AllowedSchemes = Names("https mailto"),
            }
        );
        rules.FilterUrl += (_, url) =>
        {
            var isImage = url.Tag.LocalName == "img";
            url.SanitizedUrl = LinkPolicy.Refusal(url.OriginalUrl, isImage) is null ? url.SanitizedUrl : null;
        };
        return rules;
    }

    private static HashSet<string> Names(string names) => new(names.Split(' '), StringComparer.OrdinalIgnoreCase);
}
