using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages;

/// <summary>What comes closest to its limit in time over all configurations of a machine: every need and every master,
/// closest first in each check, and the one tightest cycle.</summary>
internal static class TimingWorstTable
{
    private static readonly ImmutableArray<FindingRule> Order =
    [
        TimingRules.Answer,
        TimingRules.Position,
        TimingRules.Image,
        TimingRules.Cycle,
    ];

    public static IEnumerable<Block> Of(DocumentContext context, Links links, Machine machine)
    {
        if (!context.Engineered.AllOrders.TryGetValue(machine.Id.Value, out var report))
        {
            return [];
        }

        var words = context.Words;
        var worst = report
            .Findings.Where(one => Order.Contains(one.Finding.Rule) && one.Finding.Margin is not null)
            .GroupBy(one => (one.Finding.Rule, Fit(one.Finding)))
            .Select(group => group.MinBy(one => Left(one.Finding))!)
            .OrderBy(one => Order.IndexOf(one.Finding.Rule))
            .ThenBy(one => Left(one.Finding))
            .ThenBy(one => one.Finding.Id, StringComparer.Ordinal)
            .ToList();
        return worst.Count == 0
            ? []
            :
            [
                new Paragraph(words.TimingWorstLead),
                new Table(
                    "timing-worst",
                    words.TimingWorst,
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
                Cell.Of(worst.Configuration.Quantities.Keys.Select(links.Option)),
            ],
            worst.Finding.Verdict == Verdict.Fail ? "fail" : ""
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
