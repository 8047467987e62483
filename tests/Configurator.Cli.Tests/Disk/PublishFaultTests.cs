using System.Diagnostics;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Disk;

/// <summary>The disk and the system fail under the built program: exit code 3, the old site stays, the message has the
/// path and a way out.</summary>
public sealed class PublishFaultTests : IDisposable
{
    private readonly TempFolder _work = new();
    private readonly ITestOutputHelper _output;

    public PublishFaultTests(ITestOutputHelper output)
    {
        _output = output;
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _work["catalogue"]);
        Directory.CreateDirectory(_work["out"]);
    }

    public void Dispose() => _work.Dispose();

    /// <summary>What is done to the folder <c>out</c> once a site lies in it, and what the program then says.</summary>
    public static TheoryData<string, string, string> Faults => new()
    {
        { "a disk too small for a second site", "mount -t tmpfs -o size=2600k,mode=755 none disk && cp -r out/site disk/site", "free some space" },
        { "a disk that may only be read", "mount --bind out disk && mount -o remount,bind,ro disk", "make that disk writable" },
        { "a disk without a free name", "mount -t tmpfs -o nr_inodes=350,mode=755 none disk && cp -r out/site disk/site", "free some space" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_disk_that_fails_leaves_the_old_site(string fault, string script, string advice)
    {
        PublishWell();
        Directory.CreateDirectory(_work["disk"]);
        var old = _work.Tree("out/site");
        Change();

        // Mounted in a name space of its own, so that it is gone when the shell ends, whatever happens.
        var (exitCode, said) = Publish(
            "disk/site", $"unshare --mount --map-root-user bash -c '{script} && ", "; code=$?; diff -r out/site disk/site && ls disk >&2; exit $code'");

        if (said.Contains("unshare", StringComparison.Ordinal) || said.Contains("mount:", StringComparison.Ordinal))
        {
            _output.WriteLine($"{fault}: not tried, for no disk may be mounted here");
            return;
        }

        _output.WriteLine($"{fault}: exit {exitCode}, {said.Split('\n').First(line => line.StartsWith("configurator:", StringComparison.Ordinal))}");
        Assert.Equal(ExitCodes.Environment, exitCode);
        Assert.Contains(advice, said, StringComparison.Ordinal);
        Assert.EndsWith("site\n", said, StringComparison.Ordinal);
        Assert.Equal(old, _work.Tree("out/site"));
        PublishWell();
    }

    [Fact]
    public void A_limit_on_the_size_of_files_leaves_the_old_site_and_the_next_run_publishes()
    {
        PublishWell();
        var old = _work.Tree("out/site");
        Change();

        var (exitCode, said) = Publish("out/site", "trap \"\" XFSZ; ulimit -f 2; export DOTNET_EnableWriteXorExecute=0; ", "");

        _output.WriteLine($"files of 2 KiB at most: exit {exitCode}, {said.Split('\n').First(line => line.StartsWith("configurator:", StringComparison.Ordinal))}");
        Assert.Equal(ExitCodes.Environment, exitCode);
        Assert.Contains("the system does not allow", said, StringComparison.Ordinal);
        Assert.Equal(old, _work.Tree("out/site"));
        Assert.Equal("site", Assert.Single(_work.Names("out")));
        PublishWell();
        Assert.False(string.Equals(old, _work.Tree("out/site"), StringComparison.Ordinal));
    }

    [Fact]
    public void A_target_below_a_file_is_refused_with_its_path()
    {
        _work.Write("out/letter", "a letter");

        var (exitCode, said) = Publish("out/letter/site", "", "");

        _output.WriteLine($"a target below a file: exit {exitCode}, {said.Split('\n').First(line => line.StartsWith("configurator:", StringComparison.Ordinal))}");
        Assert.Equal(ExitCodes.Environment, exitCode);
        Assert.Contains("out/letter", said, StringComparison.Ordinal);
        Assert.Equal("a letter", File.ReadAllText(_work["out/letter"]));
    }

    private void Change() => File.AppendAllText(_work["catalogue/options/lids/top-film.md"], "\nOne line more.\n");

    private void PublishWell()
    {
        var ran = Tool.Run("publish", "--to", _work["out/site"], "--catalogue", _work["catalogue"]);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
    }

    private (int ExitCode, string Said) Publish(string target, string before, string after)
    {
        var tool = Path.Combine(AppContext.BaseDirectory, "configurator");
        var start = new ProcessStartInfo("bash", ["-c", $"{before}\"{tool}\" publish --to {target} --catalogue catalogue{after}"])
        {
            WorkingDirectory = _work.Root,
        };
        return Shell.Run(start);
    }
}
