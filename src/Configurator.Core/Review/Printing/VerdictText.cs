using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Printing;

/// <summary>The verdict in words.</summary>
public static class VerdictText
{
    /// <summary>A sentence without full stop.</summary>
    public static string Say(this ReviewVerdict verdict, ReviewReport report) =>
        report.Changes.Count(verdict.Fails) switch
        {
            0 when report.Changes.IsEmpty => "nothing changed in meaning",
            0 => Decisions(report) switch
            {
                0 => "nothing fails the check, and nothing needs a decision",
                1 => "nothing fails the check; 1 kind of change needs a decision",
                var kinds => FormattableString.Invariant(
                    $"nothing fails the check; {kinds} kinds of change need a decision"
                ),
            },
            1 => $"1 change stops it (`--fail-on {verdict.Written}`)",
            var failing => FormattableString.Invariant($"{failing} changes stop it (`--fail-on {verdict.Written}`)"),
        };

    /// <summary>Kinds of change that weigh more than a note: somebody has to want them.</summary>
    private static int Decisions(ReviewReport report) =>
        report.Changes.Where(change => change.Level > Severity.Note).Select(change => change.Kind).Distinct().Count();
}
