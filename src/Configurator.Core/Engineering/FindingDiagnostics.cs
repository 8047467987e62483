using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Each failed finding yields one diagnostic, however many configurations share it.</summary>
internal static class FindingDiagnostics
{
    private const int ConfigurationsNamed = 5;

    public static ImmutableArray<FindingRule> Rules { get; } =
    [
        .. PortRules.All,
        .. SafetyChecks.All,
        .. BoxChecks.All,
        .. BoxPointChecks.All,
        .. TimingRules.All,
        .. PowerRules.All,
        .. HygieneRules.All,
    ];

    public static ImmutableArray<Rule> All { get; } =
    [.. Rules.SelectMany(rule => rule.Diagnostics).Distinct(), .. BoxPointChecks.Rules, .. RecordDiagnostics.All];

    public static ImmutableArray<Diagnostic> Of(ImmutableArray<EngineeredConfiguration> configurations) =>
        [.. Failed(configurations)];

    private static IEnumerable<Diagnostic> Failed(ImmutableArray<EngineeredConfiguration> configurations) =>
        configurations
            .SelectMany(configuration =>
                configuration
                    .Report.Findings.Where(finding => finding.IsOpen && RecordOf(configuration, finding) is null)
                    .Select(finding => (Configuration: configuration, Finding: finding))
            )
            .GroupBy(pair => (pair.Configuration.Machine.Id.Value, pair.Finding.Id, pair.Finding.Statement))
            .Select(group => Of(group.First().Finding, [.. group.Select(pair => pair.Configuration)]));

    public static string Message(Finding finding) =>
        finding.Statement + (finding.Limit is { } limit ? $"; the limit is {limit}" : "");

    private static Diagnostic Of(Finding finding, ImmutableArray<EngineeredConfiguration> configurations)
    {
        var further = configurations.Length - ConfigurationsNamed;
        return new(finding.Diagnostic, Message(finding), finding.Span)
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

    /// <summary>The record that names the finding. One that fails in spite of it is a safety finding, or the record has
    /// ended: that is reported at the record.</summary>
    private static AcceptedDeviation? RecordOf(EngineeredConfiguration configuration, Finding finding) =>
        Acceptance.RecordsFor(configuration.Proved).FirstOrDefault(record => record.Finding.Value == finding.Id);
}
