using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages;

/// <summary>What comes closest to its limit in one subject over all configurations of a machine, closest first in each
/// check; of IO-Link cycles the tightest alone.</summary>
internal static class WorstFindings
{
    /// <param name="rules">The checks, in the order of their rows.</param>
    /// <param name="id">Of the table.</param>
    /// <returns>Nothing where nothing of it is checked for all configurations.</returns>
    public static IEnumerable<Block> Of(
        DocumentContext context,
        Links links,
        Machine machine,
        ImmutableArray<FindingRule> rules,
        string id
    )
    {
        if (!context.Engineered.AllOrders.TryGetValue(machine.Id.Value, out var report))
        {
            return [];
        }

        var words = context.Words;
        var worst = report
            .Findings.Where(one => rules.Contains(one.Finding.Rule) && one.Finding.Margin is not null)
            .GroupBy(one => (one.Finding.Rule, Fit(one.Finding)))
            .Select(group => group.MinBy(one => Left(one.Finding))!)
            .OrderBy(one => rules.IndexOf(one.Finding.Rule))
            .ThenBy(one => Left(one.Finding))
            .ThenBy(one => one.Finding.Id, StringComparer.Ordinal)
            .ToList();
        return worst.Count == 0
            ? []
            :
            [
                new Paragraph(words.WorstFindingsLead),
                new Table(
                    id,
                    words.WorstFindings,
                    [
                        new(words.Check),
                        new(words.About),
                        new(words.Worst, IsNumber: true),
                        new(words.Limit, IsNumber: true),
                        new(words.Margin, IsNumber: true),
                        new(words.MostWith),
                    ],
                    [.. worst.Select(one => RowOf(links, one))]
                ),
            ];
    }

    private static Row RowOf(Links links, WorstFinding worst) =>
        new(
            [
                links.To(PagePaths.Finding(worst.Finding.Rule.Diagnostic.Code), worst.Finding.Rule.Title),
                worst.Finding.About,
                $"{worst.Finding.Value}",
                $"{worst.Finding.Limit}",
                $"{worst.Finding.Margin}",
                Cell.Of(links.Taken(worst.Configuration)),
            ],
            worst.Finding.IsOpen ? "fail" : ""
        );

    /// <summary>Instances of one fit have the same way; of cycles only the tightest is of interest.</summary>
    private static string Fit(Finding finding) =>
        finding.Rule == TimingRules.Cycle ? ""
        : InstanceKey.Parse(finding.About) is { } key ? $"{key.Source}/{key.Fit}"
        : finding.About;

    /// <summary>What is left of the limit, as a share of it.</summary>
    private static Rational Left(Finding finding) =>
        finding.Limit!.Value.Value is var limit && limit > 0 ? finding.Margin!.Value.Value / limit : 0;
}
