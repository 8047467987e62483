using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;

namespace Configurator.Site.Markup;

/// <summary>Says of every header cell what it heads, which Markdown tables cannot (WCAG 2.2, 1.3.1).</summary>
internal static class TableHeads
{
    public static void Apply(MarkdownDocument document)
    {
        var heads = document.Descendants<TableRow>().Where(row => row.IsHeader).SelectMany(row => row);
        foreach (var cell in heads)
        {
            cell.GetAttributes().AddPropertyIfNotExist("scope", "col");
        }
    }
}
