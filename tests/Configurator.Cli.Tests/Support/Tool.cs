using System.Diagnostics;
using System.Runtime.CompilerServices;
using Configurator.Cli.Commands;

namespace Configurator.Cli.Tests.Support;

/// <summary>What a run of the program printed, and how it ended.</summary>
internal sealed record Ran(int ExitCode, string Output, string Errors);

/// <summary>Runs commands: in this process, where code and templates are compiled once for all tests, or by the built
/// program as its user does.</summary>
internal static class Tool
{
    private static readonly string Program =
        Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "configurator.exe" : "configurator");

    /// <summary>What the exit code of a run is that had to be ended.</summary>
    public const int Hung = -1;

    // Of the tests' own, and warm after the first publish; programs that are started inherit it.
    [ModuleInitializer]
    internal static void UseCachesOfTheTests() =>
        Environment.SetEnvironmentVariable("XDG_CACHE_HOME", Path.Combine(AppContext.BaseDirectory, "caches"));

    /// <summary>In this process.</summary>
    public static Ran Run(params string[] arguments)
    {
        Environment.CurrentDirectory = Repository.Root;
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var exitCode = CommandLine.Run(arguments, output, errors);
        return new(exitCode, output.ToString(), errors.ToString());
    }

    /// <summary>By the built program.</summary>
    public static Ran RunProgram(params string[] arguments) => RunIn(Repository.Root, [], arguments);

    /// <summary>By the built program, which is ended with <see cref="Hung"/> where it takes longer.</summary>
    public static Ran RunWithin(TimeSpan most, params string[] arguments) => Run(Start(Repository.Root, [], arguments), most);

    /// <summary>By the built program.</summary>
    /// <param name="environment">Set for this run only.</param>
    public static Ran RunIn(string folder, IEnumerable<(string Name, string Value)> environment, params string[] arguments) =>
        Run(Start(folder, environment, arguments), Timeout.InfiniteTimeSpan);

    /// <summary>Starts a run and leaves the rest to the caller.</summary>
    public static ProcessStartInfo Start(string folder, IEnumerable<(string Name, string Value)> environment, params string[] arguments)
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

        return start;
    }

    private static Ran Run(ProcessStartInfo start, TimeSpan most)
    {
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        var hasEnded = process.WaitForExit(most);
        if (!hasEnded)
        {
            process.Kill();
        }

        process.WaitForExit();
        return new(hasEnded ? process.ExitCode : Hung, output.Result, errors.Result);
    }
}
