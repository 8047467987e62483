using System.CommandLine;
using System.Reflection;

namespace Configurator.Cli.Commands;

/// <summary>How diagnostics are printed.</summary>
internal enum OutputFormat
{
    Text,
    Json,
    Github,
}

/// <summary>Options that several commands share.</summary>
internal static class Shared
{
    public static string Version { get; } =
        typeof(Shared).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    public static Option<string> Catalogue() =>
        new("--catalogue")
        {
            Description = "Folder with machines/ and options/",
            HelpName = "DIR",
            DefaultValueFactory = _ => ".",
        };

    public static Option<OutputFormat> Format() =>
        new("--format")
        {
            Description = "How to print what was found: text, json, github",
            HelpName = "text|json|github",
            DefaultValueFactory = _ => OutputFormat.Text,
            CustomParser = result =>
                Enum.TryParse<OutputFormat>(result.Tokens[0].Value, ignoreCase: true, out var format)
                && Enum.IsDefined(format)
                    ? format
                    : Refuse(result),
        };

    private static OutputFormat Refuse(System.CommandLine.Parsing.ArgumentResult result)
    {
        result.AddError($"`{result.Tokens[0].Value}` is not a format; use text, json or github");
        return OutputFormat.Text;
    }
}
