using System.CommandLine;
using System.CommandLine.Help;
using Configurator.Core.Diagnostics;

namespace Configurator.Cli.Commands;

/// <summary>The commands, their options, and what a wrong call gets.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, TextWriter output, TextWriter errors)
    {
        var root = Root(output, errors);
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is not ExamplesFirst)
        {
            return Refuse(parsed, root, errors);
        }

        return parsed.Invoke(
            new()
            {
                EnableDefaultExceptionHandler = false,
                Output = output,
                Error = errors,
            }
        );
    }

    private static RootCommand Root(TextWriter output, TextWriter errors)
    {
        var root = new RootCommand(
            "Checks machine and option definitions and publishes the site of their configurations."
        );
        foreach (
            var command in new[]
            {
                CheckCommand.Make(output, errors),
                PublishCommand.Make(output, errors),
                OrderCommand.Make(output, errors),
                ProveCommand.Make(output, errors),
                PlanCommand.Make(output, errors),
                ReviewCommand.Make(output, errors),
                SchemaCommand.Make(output, errors),
                AboutCommand.Make(output, errors),
            }
        )
        {
            root.Subcommands.Add(command);
        }

        foreach (var help in root.Options.OfType<HelpOption>())
        {
            help.Action = new ExamplesFirst((HelpAction)help.Action!);
        }

        return root;
    }

    /// <summary>One line a mistake and where to look, not the whole help.</summary>
    private static int Refuse(ParseResult parsed, RootCommand root, TextWriter errors)
    {
        foreach (var error in parsed.Errors)
        {
            errors.WriteLine($"configurator: {error.Message}");
        }

        var names = root
            .Subcommands.Select(command => command.Name)
            .Concat(root.Subcommands.SelectMany(command => command.Options).Select(option => option.Name));
        foreach (
            var (word, nearest) in parsed
                .UnmatchedTokens.Select(word => (word, Nearest.To(word, names)))
                .Where(pair => pair.Item2 is not null)
        )
        {
            errors.WriteLine($"configurator: did you mean `{nearest}` instead of `{word}`?");
        }

        errors.WriteLine($"configurator: see `{string.Join(' ', CallOf(parsed))} --help`");
        return ExitCodes.Usage;
    }

    private static IEnumerable<string> CallOf(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand
            ? ["configurator"]
            : ["configurator", parsed.CommandResult.Command.Name];
}
