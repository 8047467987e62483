using System.Diagnostics;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Runs what .NET has no call for: pipes, permissions, limits.</summary>
internal static class Shell
{
    /// <summary>Runs a script of bash in a folder and gives what it printed.</summary>
    public static string Run(string folder, string script)
    {
        var start = new ProcessStartInfo("bash", ["-c", script]) { WorkingDirectory = folder };
        var (exitCode, output) = Run(start);
        Assert.True(exitCode == 0, $"`{script}` ended with {exitCode}: {output}");
        return output;
    }

    public static (int ExitCode, string Output) Run(ProcessStartInfo start)
    {
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.GetAwaiter().GetResult());
    }
}
