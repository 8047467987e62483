using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every washed part against its area, the washing and the agents, for those who chose the parts.</summary>
internal static class HygieneDocument
{
    public static ConfigurationDocument Document { get; } =
        new("hygiene", "HY", words => words.Hygiene, words => words.HygieneLead, Sections);

    /// <summary>Checks of single parts, in the order of their rows.</summary>
    private static readonly ImmutableArray<FindingRule> OfParts =
    [
        HygieneRules.Ingress,
        HygieneRules.Materials,
        HygieneRules.Surface,
        HygieneRules.Corners,
        HygieneRules.Threads,
    ];

    private static readonly ImmutableArray<FindingRule> WithBars =
    [
        HygieneRules.Built,
        HygieneRules.Cables,
    ];

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        if (context.Fitted.Machine.Sanitation is null)
        {
            yield return new("areas", words.Areas, [new Paragraph(words.HygieneNotStated)]);
            yield break;
        }

        var findings = context.Engineered.Report.Findings;
        yield return new(
            "limits",
            words.ShareUsed,
            [
                .. new Block?[]
                {
                    LimitBars.Of("limit-bars", words, findings.Where(one => WithBars.Contains(one.Rule)), Name),
                }.OfType<Block>(),
            ]
        );
        yield return new("areas", words.Areas, [Areas(context)]);
        yield return new("agents", words.AgentsTitle, [new Paragraph(words.AgentsLead), Agents(context)]);
        yield return new("parts", words.WashedParts, [Parts(context)]);
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Hygiene(words))]);

        static string Name(Finding finding) => $"{finding.Rule.Title}: {finding.About}";
    }

    private static Table Areas(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "areas",
            words.Areas,
            [
                new(words.Area),
                new(words.Class),
                new(words.WashUsual),
                new(words.WashHere),
                new(words.MarkingNeeded),
                new(words.CablesHere, IsNumber: true),
            ],
            [.. context.Engineered.Machine.Areas.Select(area => RowOf(context, area))]
        );
    }

    private static Row RowOf(ConfigurationContext context, Area area)
    {
        var wash = SanitationFacts.WashOf(context.Fitted, area);
        return Row.Of(
            context.In(area.Title),
            WordLists.Of(area.Class, context.Words),
            WordLists.Of(area.Wash, context.Words),
            WordLists.Of(wash, context.Words),
            string.Join(" + ", WashDemands.Of(area.Class, wash).Select(demand => demand.Text)),
            DocumentContext.Print(BuiltChecks.CablesIn(context.Fitted, area.Id.Value))
        );
    }

    private static Table Agents(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "agents",
            words.AgentsTitle,
            [
                new(words.Agent),
                new(words.Area),
                new(words.StepWord),
                new(words.InUse),
                new(words.Verdict),
                new(words.RuledOutBy),
            ],
            [
                .. AgentFates
                    .Of(context.Fitted)
                    .Select(fate =>
                        Row.Of(
                            context.In(fate.Agent.Title),
                            context.In(fate.Area.Title),
                            WordLists.Of(fate.Agent.Step, words),
                            AgentFates.Print(context, fate.Agent),
                            fate.IsLeft ? words.NoKnownConflict : words.RuledOut,
                            string.Join(
                                ", ",
                                fate.RuledOutBy.Select(part => part.Name.Replace("`", "", StringComparison.Ordinal))
                            )
                        )
                    ),
            ]
        );
    }

    private static Table Parts(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "parts",
            words.WashedParts,
            [
                new(words.About),
                new(words.Device),
                new(words.Area),
                new(words.Check),
                new(words.Required),
                new(words.Stated),
                new(words.Verdict),
                new(words.Source),
            ],
            [
                .. context
                    .Engineered.Report.Findings.Where(finding => OfParts.Contains(finding.Rule))
                    .OrderBy(finding => !finding.IsOpen)
                    .ThenBy(finding => OfParts.IndexOf(finding.Rule))
                    .ThenBy(finding => finding.Id, StringComparer.Ordinal)
                    .Select(finding => PartRow(context, finding)),
            ]
        );
    }

    private static Row PartRow(ConfigurationContext context, Finding finding) =>
        new(
            [
                finding.About,
                finding.Details[0],
                finding.Details[1],
                context.Links.To(PagePaths.Finding(finding.Diagnostic.Code), finding.Rule.Title),
                finding.Details[2],
                finding.Details[3],
                FindingCells.Of(context.Documents, finding)[0],
                finding.Source ?? finding.Rule.Source,
            ],
            FindingCells.Status(finding)
        );
}
