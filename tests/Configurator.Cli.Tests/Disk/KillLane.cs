using System.Diagnostics;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Disk;

/// <summary>One place that two catalogues are published to in turn, by runs of the built program that are killed at
/// moments drawn over the whole run.</summary>
internal sealed class KillLane : IDisposable
{
    private const double SlowerThanThought = 1.01;

    private readonly TempFolder _work = new();
    private readonly Random _moments;
    private readonly string[] _trees;
    private TimeSpan _whole;
    private int _shown = 1;

    public KillLane(int seed)
    {
        _moments = new(seed);
        _trees = [Prepare(0, "Tray one"), Prepare(1, "Tray one, changed")];
    }

    /// <summary>Runs that were over before their moment had come: they count for nothing.</summary>
    public int Ended { get; private set; }

    public int Replaced { get; private set; }

    public int Recovered { get; private set; }

    public void Dispose() => _work.Dispose();

    /// <summary>Kills so many runs. After each the old site or the new one is there whole; what was left beside it is
    /// tidied up by the next run, which says so.</summary>
    public void Kill(int count)
    {
        for (var killed = 0; killed < count;)
        {
            var next = 1 - _shown;
            var wait = _moments.NextDouble() * _whole;
            var hasEnded = HasEnded(next, wait);
            killed += hasEnded ? 0 : 1;
            Ended += hasEnded ? 1 : 0;

            var tree = _work.Tree("out/site");
            Assert.True(_trees.Contains(tree, StringComparer.Ordinal), $"kill {killed}, {wait} into the run: the site is neither the old nor the new one");
            Replaced += !hasEnded && tree == _trees[next] ? 1 : 0;
            _shown = Array.IndexOf(_trees, tree);
            if (_work.Names("out").Length > 1)
            {
                Recover();
            }
        }
    }

    private bool HasEnded(int version, TimeSpan wait)
    {
        var clock = Stopwatch.StartNew();
        using var process = Start(version);
        var hasEnded = process.WaitForExit(wait);
        _whole = hasEnded ? clock.Elapsed : _whole * SlowerThanThought;
        process.Kill();
        process.WaitForExit();
        return hasEnded;
    }

    private Process Start(int version)
    {
        var process = Process.Start(Tool.Start(_work.Root, [], Call(version)))!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        return process;
    }

    private void Recover()
    {
        var ran = Tool.Run(Call(_shown));
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        Assert.Matches("an earlier publish was interrupted|took over the lock|^$", ran.Errors);
        Assert.Equal(_trees[_shown], _work.Tree("out/site"));
        Assert.Equal(["site"], _work.Names("out"));
        Recovered++;
    }

    /// <summary>Publishes one of the two catalogues, and gives every byte of its site.</summary>
    private string Prepare(int version, string title)
    {
        var catalogue = Folder(version);
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), catalogue);
        var machine = Path.Combine(catalogue, "machines/tray-one/machine.yaml");
        File.WriteAllText(machine, File.ReadAllText(machine).Replace("en: Tray One", $"en: \"{title}\"", StringComparison.Ordinal));
        var whole = Stopwatch.StartNew();
        using var process = Start(version);
        process.WaitForExit();
        _whole = whole.Elapsed;
        Assert.Equal(ExitCodes.Fine, process.ExitCode);
        return _work.Tree("out/site");
    }

    private string[] Call(int version) => ["publish", "--to", _work["out/site"], "--catalogue", Folder(version)];

    private string Folder(int version) => _work[version == 0 ? "even" : "odd"];
}
