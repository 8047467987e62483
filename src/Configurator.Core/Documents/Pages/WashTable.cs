using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>How severely each area of a machine can be washed over all orders, and how its parts bear it.</summary>
internal static class WashTable
{
    /// <summary>Nothing where the machine does not say how it is cleaned, or not all orders are engineered.</summary>
    public static IEnumerable<Section> Of(DocumentContext context, Machine machine)
    {
        if (!context.Engineered.AllOrders.TryGetValue(machine.Id.Value, out var report) || report.Washed.IsEmpty)
        {
            return [];
        }

        var words = context.Words;
        return
        [
            new(
                "washing",
                words.WashedAllOrders,
                [
                    new Paragraph(words.WashedAllOrdersLead),
                    new Table(
                        "washing",
                        words.WashedAllOrders,
                        [
                            new(words.Area),
                            new(words.Class),
                            new(words.WashUsual),
                            new(words.WashWorst),
                            new(words.PartsHere, IsNumber: true),
                            new(words.OpenFindings),
                        ],
                        [
                            .. machine.Areas.Select(area =>
                                RowOf(context, area, [.. report.Washed.Where(one => one.Area == area.Id.Value)])
                            ),
                        ]
                    ),
                ]
            ),
        ];
    }

    private static Row RowOf(DocumentContext context, Area area, IReadOnlyList<WorstWash> parts)
    {
        var open = parts.Where(part => part.Shown != Shown.Yes).Select(part => part.About).ToList();
        return new(
            [
                context.In(area.Title),
                WordLists.Of(area.Class, context.Words),
                WordLists.Of(area.Wash, context.Words),
                parts.Count == 0 ? "" : WordLists.Of(parts.Max(part => part.Method), context.Words),
                DocumentContext.Print(parts.Count),
                string.Join(", ", open),
            ],
            open.Count > 0 ? "fail" : ""
        );
    }
}
