using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What the order is, why it goes together, and every finding.</summary>
internal static class OverviewDocument
{
    public static ConfigurationDocument Document { get; } =
        new("index", "OV", words => words.Overview, _ => "", Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("order", words.Ordered, [Order(context)]);
        yield return new("excluded", words.Excluded, [Excluded(context)]);
        yield return new("findings", words.FindingsBySubject, [Summary(context), All(context)]);
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Safety(words))]);
        yield return new("records", words.History, [History(context)]);
    }

    private static Table Order(ConfigurationContext context)
    {
        var words = context.Words;
        var configuration = context.Engineered.Proved.Configuration;
        return new(
            "order",
            words.Ordered,
            [
                new(words.Option),
                new(words.Quantity, IsNumber: true),
                new(words.Summary),
                new(words.ComesWith),
                new(words.TouchesBox),
            ],
            [
                .. configuration.Quantities.Select(taken =>
                    OrderRow(context, context.Engineered.Machine.Options[taken.Key], taken.Value)
                ),
            ]
        );
    }

    private static Table Excluded(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "excluded",
            words.Excluded,
            [new(words.Option), new(words.Summary)],
            [
                .. context
                    .Documents.Excluded[context.Engineered.Published.Document.Value]
                    .Where(context.Engineered.Machine.Options.ContainsKey)
                    .Select(option =>
                        Row.Of(
                            context.Links.Option(option),
                            context.In(context.Engineered.Machine.Options[option].Summary)
                        )
                    ),
            ]
        );
    }

    private static Row OrderRow(ConfigurationContext context, Option option, int quantity) =>
        Row.Of(
            context.Links.Option(option.Id.Value),
            DocumentContext.Print(quantity),
            context.In(option.Summary),
            context.Engineered.Proved.Configuration.Added.Contains(option.Id.Value) ? context.Words.AddedBy : "",
            CataloguePages.TouchesBox(context.Documents, option)
        );

    /// <summary>One row a check: how many passed and failed, and where it is tightest.</summary>
    private static Table Summary(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "summary",
            words.FindingsBySubject,
            [
                new(words.Check),
                new(words.Passed, IsNumber: true),
                new(words.Failed, IsNumber: true),
                new(words.Accepted, IsNumber: true),
                new(words.Tightest, IsNumber: true),
                new(words.About),
            ],
            [
                .. context
                    .Engineered.Report.Findings.GroupBy(finding => finding.Rule)
                    .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
                    .Select(group => SummaryRow(context, group)),
            ]
        );
    }

    private static Row SummaryRow(ConfigurationContext context, IGrouping<FindingRule, Finding> findings)
    {
        var tightest = findings
            .Where(finding => finding.Margin is not null)
            .MinBy(finding => finding.Margin!.Value.Value);
        var failed = findings.Count(finding => finding.IsObstacle);
        return new(
            [
                context.Links.To(PagePaths.Finding(findings.Key.Diagnostic.Code), findings.Key.Title),
                Count(findings, Verdict.Pass),
                DocumentContext.Print(findings.Count(finding => finding.IsOpen)),
                Count(findings, Verdict.Accepted),
                tightest?.Margin?.ToString() ?? "",
                tightest?.About ?? "",
            ],
            failed > 0 ? "fail" : ""
        );
    }

    private static string Count(IEnumerable<Finding> findings, Verdict verdict) =>
        DocumentContext.Print(findings.Count(finding => finding.Verdict == verdict));

    private static Table All(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "all-findings",
            words.Findings,
            [new(words.About), .. FindingCells.Columns(words), new(words.Source)],
            [
                .. context
                    .Engineered.Report.Findings.OrderBy(finding => finding.Verdict == Verdict.Pass)
                    .ThenBy(finding => finding.Id, StringComparer.Ordinal)
                    .Select(finding => new Row(
                        [
                            finding.Id,
                            .. FindingCells.Of(context.Documents, finding),
                            finding.Source ?? finding.Rule.Source,
                        ],
                        FindingCells.Status(finding)
                    )),
            ]
        );
    }

    private static Table History(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "history",
            words.History,
            [new(words.Revision), new(words.Date), new(words.By), new(words.Change)],
            [
                .. context.Engineered.Published.History.Select(step =>
                    Row.Of(step.Revision, DocumentContext.Print(step.On), context.In(step.By), context.In(step.Change))
                ),
            ]
        );
    }
}
