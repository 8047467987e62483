using System.CommandLine;
using Configurator.Core.Review;

namespace Configurator.Cli.Commands;

/// <summary><c>review</c>: what a change of the definitions means. Its options; <see cref="ReviewRun"/> does
/// it.</summary>
internal static class ReviewCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var before = new Argument<string>("BASE") { Description = "What to compare with: a folder or a git revision" };
        var after = new Argument<string?>("HEAD")
        {
            Description = "What to review: a folder or a git revision; the files in the catalogue's folder if left out",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var catalogue = Shared.Catalogue();
        var format = Format();
        var files = Files();
        var failOn = FailOn();
        var date = Shared.Date("Date of the run, by which accepted deviations end");
        var site = new Option<string?>("--site")
        {
            Description =
                "Folder for a preview: the site after the change with the review in it, the one before below it",
            HelpName = "DIR",
        };
        var command = new Command("review", "Say what a change means: for every order, every wire, every document.")
        {
            before,
            after,
            catalogue,
            format,
            files,
            failOn,
            date,
            site,
        };
        command.SetAction(parsed =>
            new ReviewRun(
                parsed.GetValue(catalogue)!,
                parsed.GetValue(format),
                parsed.GetValue(files) ?? [],
                parsed.GetValue(failOn)!,
                parsed.GetValue(date)!,
                parsed.GetValue(site),
                output,
                errors
            ).Run(parsed.GetValue(before)!, parsed.GetValue(after))
        );
        return command;
    }

    private static Option<ReviewFormat> Format() =>
        Shared.Format<ReviewFormat>("How to print the review", "text", "markdown", "github", "sarif", "json");

    private static Option<string[]> Files()
    {
        var files = new Option<string[]>("--out")
        {
            Description = "File to write the review to as well, in the form of its ending; may be given several times",
            HelpName = "FILE.md|.sarif|.json|.txt",
        };
        files.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(token => ReviewOutput.FormatOf(token.Value) is null))
            {
                result.AddError($"`{token.Value}` must end in .md, .sarif, .json or .txt");
            }
        });
        return files;
    }

    private static Option<ReviewVerdict> FailOn() =>
        new("--fail-on")
        {
            Description = "Levels (error, warning, note) and kinds of change that exit with 1; or never",
            HelpName = "LEVEL|KIND,...",
            DefaultValueFactory = _ => ReviewVerdict.Usual,
            CustomParser = result =>
            {
                if (ReviewVerdict.Parse(result.Tokens[0].Value) is { } verdict)
                {
                    return verdict;
                }

                result.AddError(
                    $"`{result.Tokens[0].Value}` is neither a level (error, warning, note), never, nor a kind of change such as home-moved"
                );
                return ReviewVerdict.Usual;
            },
        };
}
