using System.CommandLine;
using System.Globalization;
using Configurator.Cli.Disk;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary><c>publish</c>: checks, builds the site beside the old one, and swaps it in when whole.</summary>
internal static class PublishCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var to = new Option<string>("--to")
        {
            Description = "Folder for the site; a new one, an empty one, or an earlier site",
            HelpName = "DIR",
            Required = true,
        };
        var catalogue = Shared.Catalogue();
        var format = Shared.Format();
        var revision = new Option<string>("--revision")
        {
            Description = "Revision of the definitions, printed on every document",
            HelpName = "TEXT",
            DefaultValueFactory = _ => "",
        };
        var date = Shared.Date("Date of the run, kept beside the site; accepted deviations end by it");
        var fresh = new Option<bool>("--fresh-templates")
        {
            Description = "Compile all page templates anew instead of taking those kept from earlier runs",
        };
        var command = new Command("publish", "Check the definitions and publish the site.")
        {
            to,
            catalogue,
            format,
            revision,
            date,
            fresh,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(to)!,
                parsed.GetValue(catalogue)!,
                parsed.GetValue(format),
                new(Shared.Version, parsed.GetValue(revision)!, parsed.GetValue(date)!),
                parsed.GetValue(fresh) ? null : TemplateCache.OfUser(),
                output,
                errors
            )
        );
        return command;
    }

    private static int Run(
        string target,
        string folder,
        OutputFormat format,
        RunFacts facts,
        TemplateCache? cache,
        TextWriter output,
        TextWriter errors
    )
    {
        using var cancel = new CancellationTokenSource();
        Console.CancelKeyPress += (_, pressed) =>
        {
            pressed.Cancel = true;
            cancel.Cancel();
        };
        var reading = CatalogueReader.Read(folder);
        if (reading.Problem is { } problem)
        {
            return Report.Environment(problem, errors);
        }

        var engineered = Pipeline.Check(reading.Sources, Shared.Day(facts.Date));
        var site = Pipeline.Build(engineered, facts, cache);
        Report.Print(
            site.Diagnostics,
            reading.Sources,
            format,
            CheckCommand.Counts(engineered.Value),
            "checked",
            output,
            CatalogueFolder.FromHere(folder)
        );
        if (site.HasErrors)
        {
            errors.WriteLine("configurator: nothing was published; an earlier site stays as it was");
            return ExitCodes.Findings;
        }

        return Write(target, folder, site.Value, format, output, errors, cancel.Token);
    }

    private static int Write(
        string target,
        string folder,
        SiteFiles site,
        OutputFormat format,
        TextWriter output,
        TextWriter errors,
        CancellationToken cancel
    )
    {
        var result = SitePublisher.Publish(target, site.Files, folder, cancel);
        foreach (var message in result.Messages)
        {
            errors.WriteLine($"configurator: {message}");
        }

        switch (result.Verdict)
        {
            case PublishVerdict.Cancelled:
                errors.WriteLine("configurator: cancelled; an earlier site stays as it was");
                return ExitCodes.Cancelled;
            case PublishVerdict.Published when format == OutputFormat.Json:
                return ExitCodes.Fine;
            case PublishVerdict.Published:
                output.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"published {site.Files.Count} files to {target}: open {Path.Combine(target, "index.html")}"
                    )
                );
                return ExitCodes.Fine;
            default:
                return Report.Environment(result.Problem!, errors);
        }
    }
}
