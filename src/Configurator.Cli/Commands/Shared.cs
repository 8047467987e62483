using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
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
        Format<OutputFormat>("How to print what was found", "text", "json", "github");

    /// <param name="words">What may be asked for, the usual one first.</param>
    public static Option<T> Format<T>(string description, params string[] words)
        where T : struct, Enum
    {
        return new("--format")
        {
            Description = $"{description}: {string.Join(", ", words)}",
            HelpName = string.Join('|', words),
            DefaultValueFactory = _ => default,
            CustomParser = result =>
                Enum.TryParse<T>(result.Tokens[0].Value, ignoreCase: true, out var format) && Enum.IsDefined(format)
                    ? format
                    : Refuse(result),
        };

        T Refuse(ArgumentResult result)
        {
            result.AddError(
                $"`{result.Tokens[0].Value}` is not a format; use {string.Join(", ", words[..^1])} or {words[^1]}"
            );
            return default;
        }
    }

    public static Option<string> Date(string description)
    {
        var date = new Option<string>("--date")
        {
            Description = $"{description} (YYYY-MM-DD)",
            HelpName = "DATE",
            DefaultValueFactory = _ => "",
        };
        date.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && Day(result.Tokens[0].Value) is null)
            {
                result.AddError($"`{result.Tokens[0].Value}` is not a date such as 2026-10-02");
            }
        });
        return date;
    }

    /// <summary>The day meant; null where it is none.</summary>
    public static DateOnly? Day(string date) =>
        DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : null;
}
