using Configurator.Core.Engineering;
using Configurator.Core.Model.Units;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>One finding that is not what it was; null where it is not there.</summary>
internal sealed record ChangedFinding(ComparedFindings Result, ChangeKind Kind, string Id, Finding? Was, Finding? Now)
{
    public string Before => Was is null ? "" : Say(Was);

    public string After => Now is null ? "" : Say(Now);

    public string Remark =>
        Now is null ? "there is nothing left to check"
        : Kind == PublishedKinds.FindingFailed || Kind == PublishedKinds.FindingWorse
            ? FindingDiagnostics.Message(Now) + (Now.Fix is { } fix ? $"; to fix: {fix}" : "")
        : Now.Value is { } value && Now.Limit is { } limit ? $"{Title}: {value}, {Bound} {limit}{Earlier(value)}"
        : Now.Statement;

    private string Title => char.ToLowerInvariant(Now!.Rule.Title[0]) + Now.Rule.Title[1..];

    /// <summary>Which way the limit goes, as a margin tells that is not zero.</summary>
    private string Bound =>
        new[] { Now, Was }
            .Select(finding =>
                finding is { Margin: { } margin, Value: { } value, Limit: { } limit } && margin.Value != 0
                    ? margin.Value == limit.Value - value.Value
                        ? "at most"
                        : "at least"
                    : null
            )
            .FirstOrDefault(bound => bound is not null)
        ?? "limit";

    private string Earlier(Measure now) => Was?.Value is { } was && was != now ? $" (was {was})" : "";

    /// <summary>1 at the limit, more beyond it.</summary>
    public double Tightness =>
        Now is { Margin: { } margin, Limit: { } limit } && limit.Value > 0 ? 1 - (margin.Value / limit.Value).ToDouble()
        : Now?.Verdict == Verdict.Fail ? 1
        : 0;

    private static string Say(Finding finding) =>
        finding.Margin is { } margin ? $"{margin}{(finding.Verdict == Verdict.Accepted ? ", accepted" : "")}"
        : finding.Verdict == Verdict.Pass ? "passes"
        : finding.Verdict == Verdict.Fail ? "fails"
        : "accepted";
}
