using System.CommandLine;
using Configurator.Cli.Disk;
using Configurator.Core.Engineering;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary><c>check</c>: everything that can be found wrong, without writing anything.</summary>
internal static class CheckCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var catalogue = Shared.Catalogue();
        var format = Shared.Format();
        var date = Shared.Date("Date of the run, by which accepted deviations end");
        var command = new Command("check", "Find everything that is wrong with the definitions.")
        {
            catalogue,
            format,
            date,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(catalogue)!,
                parsed.GetValue(format),
                Shared.Day(parsed.GetValue(date)!),
                output,
                errors
            )
        );
        return command;
    }

    private static int Run(string folder, OutputFormat format, DateOnly? on, TextWriter output, TextWriter errors)
    {
        var reading = CatalogueReader.Read(folder);
        if (reading.Problem is { } problem)
        {
            return Report.Environment(problem, errors);
        }

        var checkedCatalogue = Pipeline.CheckWithProse(reading.Sources, on);
        Report.Print(
            checkedCatalogue.Diagnostics,
            reading.Sources,
            format,
            Counts(checkedCatalogue.Value),
            "checked",
            output,
            CatalogueFolder.FromHere(folder)
        );
        return checkedCatalogue.HasErrors ? ExitCodes.Findings : ExitCodes.Fine;
    }

    public static IEnumerable<KeyValuePair<string, int>> Counts(EngineeredCatalogue engineered) =>
        [
            new("machines", engineered.Catalogue.Machines.Count),
            new("options", engineered.Catalogue.Options.Count),
            new("devices", engineered.Catalogue.Devices.Count),
            new("configurations", engineered.Configurations.Length),
            new("recipes", engineered.Catalogue.Recipes.Length),
            new("findings", engineered.Configurations.Sum(configuration => configuration.Report.Findings.Length)),
        ];
}
