using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>What holds for every configuration of a machine, published or not: said in a sentence, and for each check
/// the configuration that comes closest to the limit.</summary>
internal static class AllOrdersSection
{
    public static ImmutableArray<Section> Of(DocumentContext context, Links links, Machine machine) =>
        context.Engineered.AllOrders.TryGetValue(machine.Id.Value, out var report)
            ? [new("all-orders", context.Words.AllOrders, [Sentence(context, report), Closest(context, links, report)])]
            : [];

    /// <summary>Does all of it hold? Nothing where that is not engineered.</summary>
    public static IEnumerable<Block> Sentence(DocumentContext context, Machine machine) =>
        context.Engineered.AllOrders.TryGetValue(machine.Id.Value, out var report) ? [Sentence(context, report)] : [];

    private static Paragraph Sentence(DocumentContext context, AllOrdersReport report)
    {
        var words = context.Words;
        var total = context.Engineered.Proved.Logic[report.Machine.Id.Value].Logic.Count(Logic.PartialOrder.Empty);
        var number = total is { } count ? OrderText.Number(count) : null;
        return new(
            report.Holds ? words.HoldsForAll(number) : words.DoesNotHoldForAll(number, report.Findings.Count(IsFailed))
        );
    }

    private static Table Closest(DocumentContext context, Links links, AllOrdersReport report)
    {
        var words = context.Words;
        return new(
            "closest",
            words.ClosestToLimits,
            [new(words.Check), .. FindingCells.Columns(words), new(words.With), new(words.Proof)],
            [
                .. AllOrdersText
                    .Closest(report)
                    .OrderBy(worst => worst.Finding.Rule.Name, StringComparer.Ordinal)
                    .Select(worst => RowOf(context, links, worst)),
            ]
        );
    }

    private static Row RowOf(DocumentContext context, Links links, WorstFinding worst)
    {
        var finding = worst.Finding;
        return new(
            [
                links.To(PagePaths.Finding(finding.Rule.Diagnostic.Code), finding.Rule.Title),
                .. FindingCells.Of(context, finding),
                Cell.Of(links.Taken(worst.Configuration)),
                worst.IsProved ? context.Words.Proved : context.Words.NotProved,
            ],
            FindingCells.Status(finding)
        );
    }

    private static bool IsFailed(WorstFinding worst) => worst.Finding.IsObstacle;
}
