using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Configurator.Cli.Commands;

/// <summary>Help that starts with what people type.</summary>
internal sealed class ExamplesFirst(HelpAction help) : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (var (call, what) in For(parseResult.CommandResult.Command.Name))
        {
            output.WriteLine($"  {call, -48} {what}");
        }

        output.WriteLine();
        return help.Invoke(parseResult);
    }

    private static IEnumerable<(string Call, string What)> For(string command) =>
        command switch
        {
            "check" =>
            [
                ("configurator check", "check the catalogue in this folder"),
                ("configurator check --catalogue ../plant", "check another one"),
                ("configurator check --format github", "annotate a pull request"),
            ],
            "publish" =>
            [
                ("configurator publish --to _site", "check, then build the site into _site"),
                ("configurator publish --to _site --revision 1a2b3c", "print that revision on every document"),
            ],
            "order" =>
            [
                ("configurator order pantry-four hot-fill", "what hot-fill brings and leaves"),
                ("configurator order pantry-four doser-heads=3 toppings=2", "with numbers"),
            ],
            "prove" =>
            [
                ("configurator prove", "count the configurations of every machine"),
                ("configurator prove pantry-four --format json", "of one, for a program"),
                ("configurator prove pantry-four --weigh mass", "all of one load: extremes, margins, histogram"),
            ],
            "review" =>
            [
                ("configurator review origin/main", "these files against that branch"),
                ("configurator review v1.2 v1.3 --format markdown", "two revisions, for a summary"),
                ("configurator review ../old ../new --site _site", "two folders, with a preview to look at"),
            ],
            "schema" =>
            [
                ("configurator schema", "write what editors check definitions with"),
                ("configurator schema --check", "are the committed ones up to date?"),
            ],
            "about" => [("configurator about CFG2003", "what a code means and how to fix it")],
            _ =>
            [
                ("configurator check", "find everything that is wrong"),
                ("configurator publish --to _site", "build the site"),
                ("configurator order pantry-four hot-fill", "try an order"),
                ("configurator prove", "count configurations, check the rules"),
                ("configurator review origin/main", "say what a change means"),
                ("configurator schema", "write what editors check definitions with"),
                ("configurator about CFG2003", "what a code means and how to fix it"),
            ],
        };
}
