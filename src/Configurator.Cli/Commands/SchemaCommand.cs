using System.CommandLine;
using System.Globalization;
using Configurator.Cli.Disk;
using Configurator.Core.Binding.Schemas;

namespace Configurator.Cli.Commands;

/// <summary><c>schema</c>: writes what editors must know of the definitions' form, or checks that they do.</summary>
internal static class SchemaCommand
{
    private const string Schemas = "schemas";

    public static Command Make(TextWriter output, TextWriter errors)
    {
        var target = new Option<string?>("--out")
        {
            Description = $"Folder for the schemas; {CatalogueRules.Templates}/{Schemas} of the catalogue if left out",
            HelpName = "DIR",
        };
        target.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: "" }])
            {
                result.AddError("`--out` needs the name of a folder");
            }
        });
        var check = new Option<bool>("--check")
        {
            Description = "Write nothing; exit with 1 if a schema there is not what this version writes",
        };
        var catalogue = Shared.Catalogue();
        var command = new Command(
            "schema",
            "Write JSON Schemas: of the definitions, for editors, and of reviews, for programs."
        )
        {
            target,
            check,
            catalogue,
        };
        command.SetAction(parsed =>
            Run(parsed.GetValue(target), parsed.GetValue(catalogue)!, parsed.GetValue(check), output, errors)
        );
        return command;
    }

    private static int Run(string? target, string catalogue, bool check, TextWriter output, TextWriter errors)
    {
        var folder = target is null ? InCatalogue(catalogue, Schemas) : Path.TrimEndingDirectorySeparator(target);
        try
        {
            return (target is null ? JudgeCatalogue(catalogue) : null) is { } problem
                ? Report.Environment(problem, errors)
                : Run(new SchemaFolder(folder), folder, check, output, errors);
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            var doing = $"cannot {(check ? "read" : "write")} the schemas in `{folder}`";
            return Report.Environment(DiskProblem.From(doing, failure), errors);
        }
    }

    private static int Run(SchemaFolder folder, string shown, bool check, TextWriter output, TextWriter errors)
    {
        var files = SchemaWriter.All();
        if (folder.Judge(files) is { } problem)
        {
            return Report.Environment(problem, errors);
        }

        var differing = folder.Differing(files);
        if (!check)
        {
            folder.Write(differing);
        }

        foreach (var file in differing)
        {
            var path = folder.PathOf(file);
            output.WriteLine(check ? $"{path} is not what this version writes" : $"wrote {path}");
        }

        if (check && !differing.IsEmpty)
        {
            output.WriteLine("  to fix: run the same command without `--check`");
            return ExitCodes.Findings;
        }

        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{files.Length} schemas in {shown} are what this version writes"
            )
        );
        return ExitCodes.Fine;
    }

    /// <summary>A mistyped folder must not become a catalogue, and a link in one must not lead out of it.</summary>
    private static DiskProblem? JudgeCatalogue(string catalogue)
    {
        if (!Directory.Exists(catalogue))
        {
            return new($"there is no folder `{catalogue}`", "give the folder that holds `machines` and `options`");
        }

        var templates = InCatalogue(catalogue);
        return FileKinds.Of(templates) is FileKind.Folder or FileKind.Missing
            ? null
            : new($"`{templates}` is not a folder", "put the folder itself there, or choose another with `--out`");
    }

    private static string InCatalogue(string catalogue, string folder = "") =>
        Path.Join(catalogue == "." ? "" : catalogue, CatalogueRules.Templates, folder);
}
