using System.ComponentModel;
using System.Diagnostics;

namespace Configurator.Cli.Disk;

/// <summary>What a run of git gave.</summary>
/// <param name="Errors">Its first line of complaint; empty where there is none.</param>
internal sealed record GitRun(int ExitCode, byte[] Output, string Errors);

/// <summary>Runs git to read from a repository: without a shell, without asking anybody, and without changing
/// anything.</summary>
internal static class GitProcess
{
    private const int ComplaintMax = 300;

    /// <summary>Null where git is not installed.</summary>
    /// <param name="input">Written to it, a line each.</param>
    /// <param name="outputMax">In bytes; a run that gives more is ended, and counts as failed.</param>
    public static GitRun? Run(string folder, IReadOnlyList<string> arguments, IEnumerable<string> input, long outputMax)
    {
        try
        {
            using var process = Process.Start(Start(folder, arguments))!;
            var complaint = process.StandardError.ReadToEndAsync();
            var feeding = Task.Run(() => Feed(process, input));
            var output = Read(process.StandardOutput.BaseStream, outputMax);
            if (output is null)
            {
                process.Kill();
            }

            process.WaitForExit();
            feeding.Wait();
            return output is null
                ? new(-1, [], "git gave more than can be read")
                : new(process.ExitCode, output, FirstLine(complaint.Result));
        }
        catch (Win32Exception)
        {
            return null;
        }
    }

    private static ProcessStartInfo Start(string folder, IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo("git")
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in arguments.Prepend(folder).Prepend("-C"))
        {
            start.ArgumentList.Add(argument);
        }

        foreach (var (name, value) in Environment)
        {
            start.Environment[name] = value;
        }

        return start;
    }

    /// <summary>No question, no lock, no fetching of what a partial clone lacks; messages in English.</summary>
    private static readonly (string Name, string Value)[] Environment =
    [
        ("GIT_TERMINAL_PROMPT", "0"),
        ("GIT_OPTIONAL_LOCKS", "0"),
        ("GIT_NO_LAZY_FETCH", "1"),
        ("GIT_NO_REPLACE_OBJECTS", "1"),
        ("LC_ALL", "C"),
    ];

    private static void Feed(Process process, IEnumerable<string> input)
    {
        try
        {
            using var lines = process.StandardInput;
            lines.NewLine = "\n";
            foreach (var line in input)
            {
                lines.WriteLine(line);
            }
        }
        catch (IOException)
        {
            // It ended before it had read all: its exit code says why.
        }
    }

    private static byte[]? Read(Stream stream, long most)
    {
        using var output = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (var read = stream.Read(buffer); read > 0; read = stream.Read(buffer))
        {
            output.Write(buffer, 0, read);
            if (output.Length > most)
            {
                return null;
            }
        }

        return output.ToArray();
    }

    private static string FirstLine(string complaint)
    {
        var line = complaint.Split('\n')[0].Trim();
        return line.Length <= ComplaintMax ? line : line[..ComplaintMax];
    }
}
