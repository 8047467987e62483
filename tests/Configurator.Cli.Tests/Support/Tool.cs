using System.Diagnostics;

namespace Configurator.Cli.Tests.Support;

/// <summary>What a run of the program printed, and how it ended.</summary>
internal sealed record Ran(int ExitCode, string Output, string Errors);

/// <summary>Runs the built program as its user does.</summary>
internal static class Tool
{
    private static readonly string Program =
        Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "configurator.exe" : "configurator");

    /// <summary>What the exit code of a run is that had to be ended.</summary>
    public const int Hung = -1;

    public static Ran Run(params string[] arguments) => RunIn(Repository.Root, [], arguments);

    /// <summary>Ends the run with <see cref="Hung"/> where it takes longer.</summary>
    public static Ran RunWithin(TimeSpan most, params string[] arguments) => Run(Start(Repository.Root, [], arguments), most);

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

        // A cache of the tests' own, and warm after the first publish.
        start.Environment["XDG_CACHE_HOME"] = Path.Combine(AppContext.BaseDirectory, "caches");
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
