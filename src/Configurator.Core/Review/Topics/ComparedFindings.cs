using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Findings of one configuration on both sides, or the worst of all orders.</summary>
/// <param name="Machine">On the later side.</param>
/// <param name="Published">Null for the worst of all orders.</param>
/// <param name="Was">By the id that each has on the later side.</param>
internal sealed record ComparedFindings(
    Machine Before,
    Machine Machine,
    ConfigurationPair? Published,
    ImmutableArray<KeyValuePair<string, Finding>> Was,
    ImmutableArray<Finding> Now
)
{
    public IEnumerable<ChangedFinding> Compare()
    {
        var was = ById(Was);
        var now = ById(Now.Select(finding => KeyValuePair.Create(finding.Id, finding)));
        foreach (var id in was.Keys.Union(now.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var (before, after) = (was.GetValueOrDefault(id), now.GetValueOrDefault(id));
            if (KindOf(before, after) is { } kind)
            {
                yield return new(this, kind, id, before, after);
            }
        }
    }

    private static Dictionary<string, Finding> ById(IEnumerable<KeyValuePair<string, Finding>> findings) =>
        findings
            .DistinctBy(found => found.Key, StringComparer.Ordinal)
            .ToDictionary(found => found.Key, found => found.Value, StringComparer.Ordinal);

    private static ChangeKind? KindOf(Finding? was, Finding? now)
    {
        if (was?.Verdict != Verdict.Fail && now?.Verdict == Verdict.Fail)
        {
            return PublishedKinds.FindingFailed;
        }

        if (was is { Verdict: not Verdict.Pass } && (now is null || now.Verdict == Verdict.Pass))
        {
            return PublishedKinds.FindingMended;
        }

        if (was?.Verdict == Verdict.Pass && now?.Verdict == Verdict.Accepted)
        {
            return null; // Told with the record that accepts it.
        }

        return was?.Margin is { } before && now?.Margin is { } after && before.Unit == after.Unit
            ? Compare(before.Value, after.Value, now.Verdict)
            : null;
    }

    private static ChangeKind? Compare(Rational was, Rational now, Verdict verdict) =>
        was.CompareTo(now) switch
        {
            0 => null,
            < 0 => PublishedKinds.FindingEased,
            _ when verdict != Verdict.Pass => PublishedKinds.FindingWorse,
            _ when now == 0 => PublishedKinds.LimitReached,
            _ => PublishedKinds.FindingTightened,
        };
}
