using System.Collections.Immutable;
using System.Diagnostics;
using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>A catalogue made to do harm, and what the program is to say to it.</summary>
/// <param name="Name">A folder of tests/Hostile laid over tests/Cases/base/input, or an entry of
/// <see cref="HostileMade"/>.</param>
/// <param name="Codes">In ordinal order, each once.</param>
internal sealed record HostileCase(string Name, int ExitCode, string Codes)
{
    private static string Folder => Path.Combine(Repository.Root, "tests", "Hostile");

    /// <summary>The table in tests/Hostile/cases.txt.</summary>
    public static ImmutableSortedDictionary<string, HostileCase> All { get; } = File
        .ReadLines(Path.Combine(Folder, "cases.txt"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split((char[]?)null, 3, StringSplitOptions.RemoveEmptyEntries))
        .Select(parts => new HostileCase(parts[0], int.Parse(parts[1], null), parts.Length > 2 ? parts[2] : ""))
        .ToImmutableSortedDictionary(it => it.Name, it => it, StringComparer.Ordinal);

    /// <summary>Cases for which there are files or a maker.</summary>
    public static IEnumerable<string> Made =>
        Directory.EnumerateDirectories(Folder).Select(folder => Path.GetFileName(folder)!).Concat(HostileMade.All.Keys);

    /// <summary>Lays the catalogue out on disk.</summary>
    public void Lay(TempFolder catalogue)
    {
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), catalogue.Root);
        if (HostileMade.All.TryGetValue(Name, out var make))
        {
            make(catalogue);
        }
        else
        {
            Repository.Copy(Path.Combine(Folder, Name), catalogue.Root);
        }
    }

    /// <summary>Runs the built program, and ends it where it does not end by itself.</summary>
    public static (Ran Ran, long Milliseconds) Run(TimeSpan most, params string[] arguments)
    {
        var clock = Stopwatch.StartNew();
        return (Tool.RunWithin(most, arguments), clock.ElapsedMilliseconds);
    }
}
