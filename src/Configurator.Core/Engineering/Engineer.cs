using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Everything computed for one machine built to one configuration.</summary>
/// <param name="Findings">Passes and failures, by id.</param>
public sealed record EngineeringReport(
    FittedMachine Fitted,
    ImmutableArray<CableRun> Cables,
    ImmutableArray<Finding> Findings
);

/// <summary>A published configuration with its engineering, accepted deviations applied.</summary>
public sealed record EngineeredConfiguration(ProvedConfiguration Proved, EngineeringReport Report)
{
    public PublishedConfiguration Published => Proved.Published;

    public Machine Machine => Proved.Machine;

    /// <summary>Engineered without failed findings: what a salesperson may call checked.</summary>
    public bool IsChecked => Report.Findings.All(finding => !finding.IsObstacle);
}

/// <summary>The catalogue with the engineering of every published configuration.</summary>
/// <param name="AllOrders">What holds for every configuration of each machine, where that is engineered.</param>
public sealed record EngineeredCatalogue(
    ProvedCatalogue Proved,
    ImmutableArray<EngineeredConfiguration> Configurations,
    ImmutableSortedDictionary<MachineId, AllOrdersReport> AllOrders
)
{
    public Catalogue Catalogue => Proved.Catalogue;
}

/// <summary>Fourth stage: what each published configuration comes to.</summary>
public static class Engineer
{
    /// <summary>Checks one configuration on one machine with the given homes.</summary>
    public static EngineeringReport Compute(Machine machine, Configuration configuration, PortPlan pins)
    {
        var fitted = FittedMachine.Of(machine, configuration, pins);
        var cables = Cabling.Of(fitted);
        IEnumerable<Finding> findings =
        [
            .. PortChecks.Compute(fitted),
            .. ReachChecks.Compute(fitted, cables),
            .. CurrentChecks.Compute(fitted),
            .. SafetyChecks.Compute(fitted),
            .. BoxChecks.Compute(fitted, cables),
            .. BoxPointChecks.Compute(fitted),
            .. PowerChecks.Compute(fitted, cables),
            .. BoxChannelChecks.Compute(fitted),
            .. TimingChecks.Compute(fitted),
            .. HygieneChecks.Compute(fitted),
        ];
        return new(fitted, cables, [.. findings.OrderBy(finding => finding.Id, StringComparer.Ordinal)]);
    }

    /// <summary>Engineers what was proved. Where definitions have errors, nothing is said of all orders: it may follow
    /// from these. A published order that breaks a rule concerns no other.</summary>
    /// <param name="on">The day of the run, by which accepted deviations end; null where none was given.</param>
    public static Outcome<EngineeredCatalogue> Compute(Outcome<ProvedCatalogue> proved, DateOnly? on = null) =>
        proved.Then(catalogue => Compute(catalogue, on, isSound: !proved.Diagnostics.Any(IsDoubtful)));

    private static bool IsDoubtful(Diagnostic diagnostic) =>
        diagnostic.Rule.Severity == Severity.Error && !LogicDiagnostics.OfOneOrder.Contains(diagnostic.Rule);

    private static Outcome<EngineeredCatalogue> Compute(ProvedCatalogue proved, DateOnly? on, bool isSound)
    {
        ImmutableArray<EngineeredConfiguration> configurations =
        [
            .. proved
                .Configurations.Where(configuration => configuration.Machine.IsWhole)
                .AsParallel()
                .AsOrdered()
                .Select(configuration => Compute(configuration, proved.Catalogue.Site.Languages, on)),
        ];
        var allOrders = proved
            .Logic.Values.Where(proof => isSound && proof.Logic.Machine.IsWhole)
            .AsParallel()
            .Select(proof => Accepted(AllOrdersProof.Of(proof.Logic), on))
            .ToImmutableSortedDictionary(report => report.Machine.Id.Value, report => report);
        return new(
            new(proved, configurations, allOrders),
            [
                .. FindingDiagnostics.Of(configurations),
                .. RecordDiagnostics.Of(proved.Catalogue, configurations, on),
                .. proved
                    .Logic.Values.Where(proof => proof.Logic.Machine.IsWhole)
                    .SelectMany(proof => BoxPointChecks.OfPlan(proof.Logic.Machine)),
                .. allOrders.Values.SelectMany(report => AllOrdersDiagnostics.Of(report, configurations)),
            ]
        );
    }

    private static AllOrdersReport Accepted(AllOrdersReport report, DateOnly? on)
    {
        var records = report.Machine.Accepted.Where(record => !Acceptance.HasEnded(record, on)).ToList();
        return report with
        {
            Findings =
            [
                .. report.Findings.Select(worst => worst with { Finding = Acceptance.Apply(worst.Finding, records) }),
            ],
        };
    }

    private static EngineeredConfiguration Compute(
        ProvedConfiguration proved,
        ImmutableArray<string> languages,
        DateOnly? on
    )
    {
        var report = Compute(proved.Machine, proved.Configuration, proved.Machine.Plan);
        ImmutableArray<Finding> findings =
        [
            .. report
                .Findings.Concat(TranslationChecks.Compute(report.Fitted, languages))
                .OrderBy(finding => finding.Id, StringComparer.Ordinal),
        ];
        return new(proved, report with { Findings = Acceptance.Apply(findings, proved, on) });
    }
}
