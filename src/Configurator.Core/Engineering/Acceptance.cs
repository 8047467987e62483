using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Applies accepted deviations: a failure that a record accepts is shown as accepted, never hidden.</summary>
internal static class Acceptance
{
    /// <param name="on">The day of the run: records that ended before it do not count. Without it none has
    /// ended.</param>
    public static ImmutableArray<Finding> Apply(
        ImmutableArray<Finding> findings,
        ProvedConfiguration proved,
        DateOnly? on
    ) => [.. findings.Select(finding => Apply(finding, RecordsFor(proved).Where(record => !HasEnded(record, on))))];

    /// <summary>Those of the configuration come before those of its machine.</summary>
    public static IEnumerable<AcceptedDeviation> RecordsFor(ProvedConfiguration proved) =>
        proved.Published.Accepted.Concat(proved.Machine.Accepted);

    public static bool HasEnded(AcceptedDeviation record, DateOnly? on) => on is { } day && record.Until < day;

    public static Finding Apply(Finding finding, IEnumerable<AcceptedDeviation> records) =>
        finding is { IsOpen: true, Rule.IsSafety: false }
        && records.FirstOrDefault(record => record.Finding.Value == finding.Id) is { } accepted
            ? finding with
            {
                Verdict = Verdict.Accepted,
                Accepted = accepted,
            }
            : finding;
}
