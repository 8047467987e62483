using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Loads.Printing;
using Configurator.Core.Logic;

namespace Configurator.Cli.Commands;

/// <summary><c>prove MACHINE --weigh LOAD</c>: all of one load over all configurations.</summary>
internal static class WeighLoad
{
    public static int Run(
        IReadOnlyList<MachineProof> shown,
        string weigh,
        OutputFormat format,
        TextWriter output,
        TextWriter errors
    )
    {
        if (shown.Count != 1)
        {
            errors.WriteLine("configurator: a load is weighed on one machine");
            errors.WriteLine("  to fix: name the machine, as in `configurator prove MACHINE --weigh LOAD`");
            return ExitCodes.Usage;
        }

        var logic = shown[0].Logic;
        var loads = MachineLoads.Named(logic.Machine);
        if (loads.FirstOrDefault(load => load.Id == weigh) is not { } known)
        {
            errors.WriteLine($"configurator: there is no load `{weigh}` on `{logic.Machine.Id.Value}`");
            errors.WriteLine($"  to fix: use one of {string.Join(", ", loads.Select(load => load.Id))}");
            return ExitCodes.Usage;
        }

        if (LoadReport.Of(logic, known) is not { } report)
        {
            output.WriteLine($"no order of `{logic.Machine.Id.Value}` keeps all rules");
            return ExitCodes.Findings;
        }

        var count = logic.Count(PartialOrder.Empty);
        output.Write(format == OutputFormat.Json ? LoadJson.Of(report, count) : LoadReportText.Of(report, count));
        return ExitCodes.Fine;
    }
}
