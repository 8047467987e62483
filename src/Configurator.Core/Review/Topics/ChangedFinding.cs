using Configurator.Core.Engineering;
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
        : Now.Value is { } value && Now.Limit is { } limit ? $"{value} of {limit}"
        : Now.Statement;

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
