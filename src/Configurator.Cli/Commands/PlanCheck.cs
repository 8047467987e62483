using Configurator.Cli.Disk;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Model;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary><c>plan --check</c>: do the port plans hold for every configuration? Needs no planner.</summary>
internal static class PlanCheck
{
    public static int Run(string folder, string? machine, TextWriter output, TextWriter errors)
    {
        var reading = CatalogueReader.Read(folder);
        if (reading.Problem is { } problem)
        {
            return Report.Environment(problem, errors);
        }

        var engineered = Pipeline.Check(reading.Sources);
        if (machine is not null && !engineered.Value.Catalogue.Machines.ContainsKey(new(machine)))
        {
            errors.WriteLine($"configurator: there is no machine `{machine}`");
            return ExitCodes.Usage;
        }

        var shown = engineered
            .Value.AllOrders.Values.Where(report => machine is null || report.Machine.Id.Value.Value == machine)
            .ToList();
        foreach (var report in shown)
        {
            output.Write(AllOrdersText.Of(report));
        }

        List<Diagnostic> about =
        [
            .. engineered.Diagnostics.Where(diagnostic => machine is null || Concerns(diagnostic, new(machine))),
        ];
        Report.Print(about, reading.Sources, OutputFormat.Text, [new("machines", shown.Count)], "checked", output);
        return about.Exists(diagnostic => diagnostic.Rule.Severity == Severity.Error)
            ? ExitCodes.Findings
            : ExitCodes.Fine;
    }

    /// <summary>What stands in another machine's folder is of no concern.</summary>
    private static bool Concerns(Diagnostic diagnostic, MachineId machine) =>
        !diagnostic.Span.Path.StartsWith("machines/", StringComparison.Ordinal)
        || diagnostic.Span.Path.StartsWith($"machines/{machine}/", StringComparison.Ordinal);
}
