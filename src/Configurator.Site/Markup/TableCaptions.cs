using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Configurator.Site.Markup;

/// <summary>
/// Gives every table a caption: the paragraph before it that starts with <c>Table:</c>, or else the nearest heading
/// above it (WCAG 2.2, 1.3.1). Markdown has no form of its own for that.
/// </summary>
internal static class TableCaptions
{
    private const string Mark = "Table:";

    public static void Apply(IElement body)
    {
        var heading = "Table";
        foreach (var element in body.QuerySelectorAll("h2,h3,h4,h5,h6,table"))
        {
            if (element is not IHtmlTableElement table)
            {
                heading = element.TextContent.Trim();
            }
            else if (Written(table) is { } paragraph)
            {
                Caption(table, paragraph.TextContent.Trim()[Mark.Length..].Trim());
                paragraph.Remove();
            }
            else
            {
                Caption(table, heading);
            }
        }
    }

    private static IHtmlParagraphElement? Written(IHtmlTableElement table) =>
        table.PreviousElementSibling is IHtmlParagraphElement paragraph
        && paragraph.TextContent.TrimStart().StartsWith(Mark, StringComparison.Ordinal)
            ? paragraph
            : null;

    private static void Caption(IHtmlTableElement table, string text) => table.CreateCaption().TextContent = text;
}
