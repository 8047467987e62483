using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.AllOrders;

/// <summary>Reports what fails only in configurations that are not published. While a published one of the machine
/// fails, that is reported alone: the rest often follows from it.</summary>
internal static class AllOrdersDiagnostics
{
    public static IEnumerable<Diagnostic> Of(AllOrdersReport report, ImmutableArray<EngineeredConfiguration> published)
    {
        var known = published
            .Where(configuration => configuration.Machine.Id.Value == report.Machine.Id.Value)
            .SelectMany(configuration => configuration.Report.Findings)
            .Where(finding => finding.Verdict != Verdict.Pass)
            .ToList();
        if (known.Exists(finding => finding.IsObstacle))
        {
            return [];
        }

        var accepted = known.Select(finding => finding.Rule).ToHashSet();
        return report
            .Findings.Where(worst => worst.Finding.IsObstacle && !accepted.Contains(worst.Finding.Rule))
            .GroupBy(worst => (worst.Finding.Rule.Name, worst.Finding.Statement))
            .Select(group => Of(report.Machine, group.First()));
    }

    private static Diagnostic Of(Machine machine, WorstFinding worst) =>
        new(worst.Finding.Diagnostic, FindingDiagnostics.Message(worst.Finding), worst.Finding.Span)
        {
            Notes =
            [
                new(
                    $"finding `{worst.Finding.Id}` in an order that nobody has published yet: {OrderOf(worst.Configuration)}",
                    machine.Id.Span
                ),
            ],
            Fix = worst.Finding.Fix is null ? null : new(worst.Finding.Fix),
        };

    private static string OrderOf(Configuration order) =>
        order.Quantities.IsEmpty
            ? "no options"
            : string.Join(
                ' ',
                order.Quantities.Select(pick =>
                    pick.Value == 1 ? pick.Key.Value : FormattableString.Invariant($"{pick.Key}={pick.Value}")
                )
            );
}
