using Configurator.Core.Engineering;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every limit of every subject, as a bar and in words.</summary>
internal static class BudgetsDocument
{
    public static ConfigurationDocument Document { get; } =
        new("budgets", "BU", words => words.Budgets, words => words.BudgetsLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context) =>
        context
            .Engineered.Report.Findings.GroupBy(SubjectOf, StringComparer.Ordinal)
            .OrderBy(subject => subject.Key, StringComparer.Ordinal)
            .Select(subject => (subject.Key, Bars: LimitBars.Of($"budget-{subject.Key}", context.Words, subject, Name)))
            .Where(subject => subject.Bars is not null)
            .Select(subject => new Section(
                subject.Key,
                TitleOf(context.Words, subject.Key),
                [subject.Bars! with { Caption = TitleOf(context.Words, subject.Key) }]
            ));

    /// <summary>The first part of a rule's name is its subject.</summary>
    private static string SubjectOf(Finding finding) => finding.Rule.Name.Split('.')[0];

    private static string TitleOf(SiteWords words, string subject) =>
        subject switch
        {
            "ports" => words.BudgetPorts,
            "power" => words.Power,
            "safety" => words.SafetyWiring,
            "timing" => words.Timing,
            "box" => words.BudgetBox,
            _ => words.BudgetOther,
        };

    private static string Name(Finding finding) => $"{finding.Rule.Title}: {finding.About}";
}
