using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>How long answers take, how far positions may be off, and what travels at each port.</summary>
internal static class TimingDocument
{
    public static ConfigurationDocument Document { get; } =
        new("timing", "TI", words => words.Timing, words => words.TimingLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("limits", words.ShareUsed, [.. Bars(context)]);
        yield return new("answers", words.Answers, [new Paragraph(words.AnswersLead), Answers(context)]);
        yield return new("positions", words.Positions, [new Paragraph(words.PositionsLead), Positions(context)]);
        yield return new("messages", words.Messages, [new Paragraph(words.MessagesLead), MessageTable.Of(context)]);
        yield return new("process-data", words.ProcessImage, [Images(context)]);
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Timing(words))]);
    }

    private static IEnumerable<Block> Bars(ConfigurationContext context)
    {
        var findings = context.Engineered.Report.Findings.Where(finding =>
            finding.Rule == TimingRules.Answer
            || finding.Rule == TimingRules.Position
            || finding.Rule == TimingRules.Image
        );
        yield return (Block?)LimitBars.Of("limit-bars", context.Words, findings, About)
            ?? new Paragraph(context.Words.NoNeeds);

        string About(Finding finding) =>
            context.Fitted.Fitted.FirstOrDefault(instance => instance.Key.ToString() == finding.About) is { } instance
                ? $"{context.Names.Of(instance)} {finding.Rule.Title}"
                : $"{finding.About} {finding.Rule.Title}";
    }

    private static Table Answers(ConfigurationContext context)
    {
        var words = context.Words;
        var stages = Enum.GetValues<ChainStage>();
        return new(
            "answers",
            words.Answers,
            [
                new(words.Designation),
                new(words.Purpose),
                .. stages.Select(stage => new Column(words.StageOf(stage), IsNumber: true)),
                new(words.Worst, IsNumber: true),
                new(words.Limit, IsNumber: true),
                new(words.Margin, IsNumber: true),
            ],
            [
                .. Found(context, TimingRules.Answer)
                    .Select(pair => new Row(
                        [
                            context.Names.Of(pair.Instance),
                            context.In(pair.Instance.Fit.Purpose),
                            .. stages.Select(Cell (stage) => Part(context, pair.Instance, stage)),
                            $"{pair.Finding.Value}",
                            $"{pair.Finding.Limit}",
                            $"{pair.Finding.Margin}",
                        ],
                        pair.Finding.Verdict == Verdict.Pass ? "" : "fail"
                    )),
            ]
        )
        {
            WhenEmpty = words.NoNeeds,
        };
    }

    private static Table Positions(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "positions",
            words.Positions,
            [
                new(words.Designation),
                new(words.Purpose),
                new(words.Speed, IsNumber: true),
                new(words.Varies, IsNumber: true),
                new(words.Deviation, IsNumber: true),
                new(words.Worst, IsNumber: true),
                new(words.Limit, IsNumber: true),
                new(words.Margin, IsNumber: true),
            ],
            [.. Found(context, TimingRules.Position).Select(pair => Position(context, pair.Instance, pair.Finding))]
        )
        {
            WhenEmpty = words.NoNeeds,
        };
    }

    private static Row Position(ConfigurationContext context, FitInstance instance, Finding finding)
    {
        var chain = Chain(context, instance);
        var speed = MachineSpeed.Of(context.Fitted.Machine, instance.Fit)!.Value;
        var deviation = Motion.DeviationMillimetres(speed.MetresPerSecond, chain.Parts.Select(part => part.Jitter));
        return new(
            [
                context.Names.Of(instance),
                context.In(instance.Fit.Purpose),
                $"{new Measure(speed.MetresPerSecond * 60, "m/min")}",
                $"{new Measure(chain.Jitter, "ms")}",
                $"{new Measure(deviation, "mm")}",
                $"{finding.Value}",
                $"{finding.Limit}",
                $"{finding.Margin}",
            ],
            finding.Verdict == Verdict.Pass ? "" : "fail"
        );
    }

    private static Table Images(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "process-data",
            words.ProcessImage,
            [
                new(words.About),
                new(words.Value, IsNumber: true),
                new(words.Limit, IsNumber: true),
                new(words.Margin, IsNumber: true),
                new(words.Source),
            ],
            [
                .. context
                    .Engineered.Report.Findings.Where(finding => finding.Rule == TimingRules.Image)
                    .Select(finding => new Row(
                        [
                            finding.About,
                            $"{finding.Value}",
                            $"{finding.Limit}",
                            $"{finding.Margin}",
                            finding.Rule.Source,
                        ],
                        finding.Verdict == Verdict.Pass ? "" : "fail"
                    )),
            ]
        );
    }

    private static IEnumerable<(FitInstance Instance, Finding Finding)> Found(
        ConfigurationContext context,
        FindingRule rule
    ) =>
        context.Fitted.Fitted.Join(
            context.Engineered.Report.Findings.Where(finding => finding.Rule == rule),
            instance => instance.Key.ToString(),
            finding => finding.About,
            (instance, finding) => (instance, finding),
            StringComparer.Ordinal
        );

    private static ResponseChain Chain(ConfigurationContext context, FitInstance instance) =>
        ResponseChain.Of(context.Fitted.Machine, instance, SignalWay.Of(context.Fitted, instance));

    private static string Part(ConfigurationContext context, FitInstance instance, ChainStage stage) =>
        Chain(context, instance).Parts.FirstOrDefault(part => part.Stage == stage) is { } part
            ? part.Longest.ToString(decimals: 3)
            : "";
}
