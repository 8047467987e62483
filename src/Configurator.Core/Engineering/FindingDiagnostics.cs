using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Each failed finding yields one diagnostic, however many configurations share it.</summary>
internal static class FindingDiagnostics
{
    private const int ConfigurationsNamed = 5;

    private static readonly Rule Useless = new(
        "CFG4901",
        Severity.Warning,
        "Accepted deviation without a failed finding"
    );
    private static readonly Rule NotAcceptable = new("CFG4902", Severity.Error, "Safety finding cannot be accepted");

    public static ImmutableArray<FindingRule> Rules { get; } =
    [.. PortRules.All, .. SafetyChecks.All, .. BoxChecks.All];

    public static ImmutableArray<Rule> All { get; } =
    [.. Rules.Select(rule => rule.Diagnostic), Useless, NotAcceptable];

    public static ImmutableArray<Diagnostic> Of(ImmutableArray<EngineeredConfiguration> configurations) =>
        [
            .. Failed(configurations),
            .. configurations.SelectMany(Acceptances).DistinctBy(diagnostic => diagnostic.Span),
        ];

    private static IEnumerable<Diagnostic> Failed(ImmutableArray<EngineeredConfiguration> configurations) =>
        configurations
            .SelectMany(configuration =>
                configuration
                    .Report.Findings.Where(finding =>
                        finding.Verdict == Verdict.Fail && RecordOf(configuration, finding) is null
                    )
                    .Select(finding => (Configuration: configuration, Finding: finding))
            )
            .GroupBy(pair => (pair.Configuration.Machine.Id.Value, pair.Finding.Id, pair.Finding.Statement))
            .Select(group => Of(group.First().Finding, [.. group.Select(pair => pair.Configuration)]));

    public static string Message(Finding finding) =>
        finding.Statement + (finding.Limit is { } limit ? $"; the limit is {limit}" : "");

    private static Diagnostic Of(Finding finding, ImmutableArray<EngineeredConfiguration> configurations)
    {
        var further = configurations.Length - ConfigurationsNamed;
        return new(finding.Rule.Diagnostic, Message(finding), finding.Span)
        {
            Notes =
            [
                .. configurations
                    .Take(ConfigurationsNamed)
                    .Select(configuration => new Note(
                        $"finding `{finding.Id}` in configuration `{configuration.Published.Id.Value}`",
                        configuration.Published.Id.Span
                    )),
                .. further > 0
                    ?
                    [
                        new Note(
                            FormattableString.Invariant($"and in {further} more configurations"),
                            configurations[^1].Published.Id.Span
                        ),
                    ]
                    : Array.Empty<Note>(),
            ],
            Fix = finding.Fix is null ? null : new(finding.Fix),
        };
    }

    private static IEnumerable<Diagnostic> Acceptances(EngineeredConfiguration configuration)
    {
        foreach (var record in configuration.Published.Accepted)
        {
            var finding = configuration.Report.Findings.FirstOrDefault(finding => finding.Id == record.Finding.Value);
            if (finding is null or { Verdict: Verdict.Pass })
            {
                if (!configuration.Report.Fitted.Pins.IsWhole)
                {
                    continue;
                }

                yield return new(
                    Useless,
                    $"`{record.Finding.Value}` is not a failed finding of `{configuration.Published.Id.Value}`",
                    record.Finding.Span
                )
                {
                    Fix = new("remove the record, or correct the id"),
                };
            }
            else if (finding.Rule.IsSafety)
            {
                yield return new(
                    NotAcceptable,
                    $"`{record.Finding.Value}` is a safety finding: {finding.Statement}",
                    record.Finding.Span
                )
                {
                    Notes = [new("it fails here", finding.Span)],
                    Fix = new(
                        $"remove the record and mend what failed{(finding.Fix is null ? "" : $": {finding.Fix}")}"
                    ),
                };
            }
        }
    }

    /// <summary>The record of a configuration that names the finding. One that fails in spite of it is a safety
    /// finding and is
    /// reported at the record.</summary>
    private static AcceptedDeviation? RecordOf(EngineeredConfiguration configuration, Finding finding) =>
        configuration.Published.Accepted.FirstOrDefault(record => record.Finding.Value == finding.Id);
}
