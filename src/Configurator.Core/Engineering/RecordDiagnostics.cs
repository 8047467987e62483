using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>What is wrong with records of accepted deviations, each reported once at the record.</summary>
internal static class RecordDiagnostics
{
    /// <summary>So long before its end a record is told of.</summary>
    private const int DaysOfNotice = 30;

    private static readonly Rule Useless = new(
        "CFG4901",
        Severity.Warning,
        "Accepted deviation without a failed finding"
    );
    private static readonly Rule NotAcceptable = new("CFG4902", Severity.Error, "Safety finding cannot be accepted");
    private static readonly Rule Ended = new("CFG4903", Severity.Error, "Accepted deviation has ended");
    private static readonly Rule Ending = new("CFG4904", Severity.Warning, "Accepted deviation ends soon");

    public static ImmutableArray<Rule> All { get; } = [Useless, NotAcceptable, Ended, Ending];

    public static IEnumerable<Diagnostic> Of(
        Catalogue catalogue,
        ImmutableArray<EngineeredConfiguration> configurations,
        DateOnly? on
    ) =>
        configurations
            .SelectMany(configuration =>
                configuration.Published.Accepted.Select(record =>
                    Of(record, $"`{configuration.Published.Id.Value}`", [configuration], isAll: true, on)
                )
            )
            .Concat(catalogue.Machines.Values.SelectMany(machine => OfMachine(catalogue, machine, configurations, on)))
            .OfType<Diagnostic>();

    /// <summary>A record of the machine is of use where the finding fails in any of its configurations.</summary>
    private static IEnumerable<Diagnostic?> OfMachine(
        Catalogue catalogue,
        Machine machine,
        ImmutableArray<EngineeredConfiguration> configurations,
        DateOnly? on
    )
    {
        ImmutableArray<EngineeredConfiguration> own =
        [
            .. configurations.Where(configuration => configuration.Machine.Id.Value == machine.Id.Value),
        ];
        var published = catalogue.Configurations.Count(configuration => configuration.Machine == machine.Id.Value);
        return machine.Accepted.Select(record =>
            Of(record, $"any configuration of `{machine.Id.Value}`", own, own.Length == published && published > 0, on)
        );
    }

    /// <param name="of">Whose finding it should be, in words.</param>
    /// <param name="isAll">No configuration is missing whose finding it may be.</param>
    private static Diagnostic? Of(
        AcceptedDeviation record,
        string of,
        ImmutableArray<EngineeredConfiguration> configurations,
        bool isAll,
        DateOnly? on
    )
    {
        var failed = configurations
            .SelectMany(configuration => configuration.Report.Findings)
            .Where(finding => finding.Id == record.Finding.Value && finding.Verdict != Verdict.Pass)
            .OrderBy(finding => finding.IsOpen ? 0 : 1)
            .FirstOrDefault();
        if (failed is null)
        {
            return isAll && configurations.All(configuration => configuration.Report.Fitted.Pins.IsWhole)
                ? IsUseless(record, of)
                : null;
        }

        return failed.Rule.IsSafety ? IsSafety(record, failed)
            : failed.IsOpen ? HasEnded(record, failed)
            : on is { } day && failed.Accepted == record && record.Until < day.AddDays(DaysOfNotice)
                ? EndsSoon(record, failed)
            : null;
    }

    private static Diagnostic IsUseless(AcceptedDeviation record, string of) =>
        new(Useless, $"`{record.Finding.Value}` is not a failed finding of {of}", record.Finding.Span)
        {
            Fix = new("remove the record, or correct the id"),
        };

    private static Diagnostic IsSafety(AcceptedDeviation record, Finding failed) =>
        new(NotAcceptable, $"`{record.Finding.Value}` is a safety finding: {failed.Statement}", record.Finding.Span)
        {
            Notes = [new("it fails here", failed.Span)],
            Fix = new($"remove the record and mend what failed{(failed.Fix is null ? "" : $": {failed.Fix}")}"),
        };

    private static Diagnostic HasEnded(AcceptedDeviation record, Finding failed) =>
        new(
            Ended,
            $"`{record.Finding.Value}` was accepted until {Day(record.Until)}, and fails: {failed.Statement}",
            record.Finding.Span
        )
        {
            Notes = [new("it fails here", failed.Span)],
            Fix = new("mend what failed, or have the deviation accepted anew"),
        };

    private static Diagnostic EndsSoon(AcceptedDeviation record, Finding failed) =>
        new(Ending, $"`{record.Finding.Value}` is accepted until {Day(record.Until)} only", record.Finding.Span)
        {
            Notes = [new("it fails here", failed.Span)],
            Fix = new("mend what failed, or have the deviation accepted anew, before then"),
        };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
