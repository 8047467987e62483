using System.Diagnostics;
using System.Globalization;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Disk;

/// <summary>The built program is killed at moments drawn at random, over the whole run and more often while it
/// writes.</summary>
public sealed class PublishMomentsTests : IDisposable
{
    private readonly TempFolder _work = new();
    private readonly ITestOutputHelper _output;
    private readonly string[] _trees;
    private TimeSpan _whole;

    public PublishMomentsTests(ITestOutputHelper output)
    {
        _output = output;
        _trees = [Prepare("even", "Tray one"), Prepare("odd", "Tray one, changed")];
    }

    public void Dispose() => _work.Dispose();

    // Law: whenever it is killed, the old site or the new one is there whole, and the next run needs no help.
    [Fact]
    public void Killed_at_a_hundred_random_moments_the_site_is_whole_and_the_next_run_recovers() => Kill(100, seed: 7);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Killed_at_five_hundred_random_moments_the_site_is_whole_and_the_next_run_recovers() => Kill(500, seed: 11);

    private void Kill(int count, int seed)
    {
        var moments = new Random(seed);
        var (shown, ended, replaced, recovered) = (0, 0, 0, 0);
        for (var number = 0; number < count; number++)
        {
            var next = 1 - shown;
            var part = moments.NextDouble();
            var wait = _whole * (number % 2 == 0 ? part : (2 + part) / 3);
            ended += HasEnded(next, wait) ? 1 : 0;

            var tree = _work.Tree("out/site");
            Assert.True(_trees.Contains(tree, StringComparer.Ordinal), $"kill {number} of seed {seed}, after {wait}: the site is neither the old nor the new one");
            replaced += tree == _trees[next] ? 1 : 0;
            shown = Array.IndexOf(_trees, tree);
            if (_work.Names("out").Length > 1)
            {
                Recover(shown);
                recovered++;
            }
        }

        _output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"killed {count - ended} of {count} runs: {count - replaced} times the old site stayed, {replaced} times the new one was there, {recovered} times the next run tidied up"));
        Assert.True(ended < count / 2 && recovered > 0);
    }

    private bool HasEnded(int version, TimeSpan wait)
    {
        using var process = Process.Start(Tool.Start(_work.Root, [], Call(version)))!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        var hasEnded = process.WaitForExit(wait);
        process.Kill();
        process.WaitForExit();
        Task.WaitAll(errors, output);
        return hasEnded;
    }

    private void Recover(int version)
    {
        var ran = Tool.RunIn(_work.Root, [], Call(version));
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        Assert.Matches("an earlier publish was interrupted|took over the lock|^$", ran.Errors);
        Assert.Equal(_trees[version], _work.Tree("out/site"));
        Assert.Equal(["site"], _work.Names("out"));
    }

    /// <summary>Publishes one of the two catalogues in the target's place and gives every byte of the site.</summary>
    private string Prepare(string name, string title)
    {
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _work[name]);
        var machine = _work[$"{name}/machines/tray-one/machine.yaml"];
        File.WriteAllText(machine, File.ReadAllText(machine).Replace("en: Tray One", $"en: \"{title}\"", StringComparison.Ordinal));
        var call = Call(name == "even" ? 0 : 1);
        Tool.RunIn(_work.Root, [], call);
        var clock = Stopwatch.StartNew();
        var ran = Tool.RunIn(_work.Root, [], call);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        _whole = clock.Elapsed;
        return _work.Tree("out/site");
    }

    private string[] Call(int version) =>
        ["publish", "--to", _work["out/site"], "--catalogue", _work[version == 0 ? "even" : "odd"]];
}
