using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Applies accepted deviations: a failure that a record accepts is shown as accepted, never hidden.</summary>
internal static class Acceptance
{
    public static ImmutableArray<Finding> Apply(ImmutableArray<Finding> findings, ProvedConfiguration proved) =>
        [.. findings.Select(finding => Apply(finding, RecordsFor(proved)))];

    public static IEnumerable<AcceptedDeviation> RecordsFor(ProvedConfiguration proved) =>
        proved.Published.Accepted.Concat(proved.Machine.Accepted);

    public static Finding Apply(Finding finding, IEnumerable<AcceptedDeviation> records) =>
        finding is { Verdict: Verdict.Fail, Rule.IsSafety: false }
        && records.FirstOrDefault(record => record.Finding.Value == finding.Id) is { } accepted
            ? finding with
            {
                Verdict = Verdict.Accepted,
                Accepted = accepted,
            }
            : finding;
}
