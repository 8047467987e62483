using System.CommandLine;
using Configurator.Core.Diagnostics;

namespace Configurator.Cli.Commands;

/// <summary><c>about</c>: what a code means.</summary>
internal static class AboutCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var code = new Argument<string>("CODE") { Description = "A code such as CFG2003" };
        var command = new Command("about", "Say what a code means and how to fix it.") { code };
        command.SetAction(parsed => Run(parsed.GetValue(code)!.ToUpperInvariant(), output, errors));
        return command;
    }

    private static int Run(string code, TextWriter output, TextWriter errors)
    {
        if (RuleBook.Page(code) is { } page)
        {
            output.Write(page);
            return ExitCodes.Fine;
        }

        errors.WriteLine($"configurator: there is no code `{code}`");
        errors.WriteLine(
            Nearest.To(code, RuleBook.Codes) is { } nearest
                ? $"  to fix: did you mean `{nearest}`?"
                : $"  to fix: codes run from {RuleBook.Codes[0]} to {RuleBook.Codes[^1]}"
        );
        return ExitCodes.Usage;
    }
}
