using System.Diagnostics;

namespace Configurator.Cli.Tests.Support;

/// <summary>What a run of the program printed, and how it ended.</summary>
internal sealed record Ran(int ExitCode, string Output, string Errors);

/// <summary>Runs the built program as its user does.</summary>
internal static class Tool
{
    private static readonly string Program =
        Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "configurator.exe" : "configurator");

    public static Ran Run(params string[] arguments) => RunIn(Repository.Root, [], arguments);

    /// <param name="environment">Set for this run only.</param>
    public static Ran RunIn(string folder, IEnumerable<(string Name, string Value)> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo(Program)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, errors.Result);
    }
}
