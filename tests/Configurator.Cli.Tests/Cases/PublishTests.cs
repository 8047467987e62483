using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Cases;

public sealed class PublishTests : IDisposable
{
    private readonly TempFolder _work = new();

    public PublishTests() => Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _work["catalogue"]);

    public void Dispose() => _work.Dispose();

    [Fact]
    public void A_failing_publish_leaves_the_earlier_site_byte_for_byte()
    {
        Publish("site");
        var before = _work.Tree("site");
        File.AppendAllText(FirstConfiguration(), "colour: blue\n");

        var ran = Tool.Run("publish", "--to", _work["site"], "--catalogue", _work["catalogue"]);

        Assert.Equal(ExitCodes.Findings, ran.ExitCode);
        Assert.Contains("error CFG2004", ran.Output, StringComparison.Ordinal);
        Assert.Contains("nothing was published; an earlier site stays as it was", ran.Errors, StringComparison.Ordinal);
        Assert.Equal(before, _work.Tree("site"));
        Assert.Equal(["catalogue", "site"], _work.Names("."));
    }

    [Fact]
    public void The_checksums_of_a_site_are_those_that_sha256sum_computes()
    {
        Publish("site");

        // Source: GNU coreutils sha256sum, the reader of this format.
        Assert.Equal("", Shell.Run(_work["site"], "sha256sum --check --quiet --strict SHA256SUMS"));
    }

    // Source: reproducible-builds.org, variations of the build environment.
    [Theory]
    [InlineData("TZ=Pacific/Kiritimati LC_ALL=tr_TR.UTF-8 DOTNET_PROCESSOR_COUNT=1")]
    [InlineData("TZ=America/St_Johns LANG=de_DE.UTF-8 DOTNET_TieredPGO=0")]
    public void The_same_definitions_give_the_same_bytes_on_another_machine(string machine)
    {
        Publish("site");
        Directory.Move(_work["catalogue"], _work["elsewhere"]);
        var environment = machine.Split(' ').Select(variable => variable.Split('=')).Select(parts => (parts[0], parts[1]));

        var ran = Tool.RunIn(_work.Root, environment, "publish", "--to", "other", "--catalogue", "elsewhere");

        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        Assert.Equal(_work.Tree("site"), _work.Tree("other"));
    }

    [Fact]
    public void A_folder_with_other_files_is_never_written_over()
    {
        _work.Write("mine/letter.txt", "keep me");

        var ran = Tool.Run("publish", "--to", _work["mine"], "--catalogue", _work["catalogue"]);

        Assert.Equal(ExitCodes.Environment, ran.ExitCode);
        Assert.Equal("keep me", File.ReadAllText(_work["mine/letter.txt"]));
    }

    private void Publish(string target)
    {
        var ran = Tool.Run("publish", "--to", _work[target], "--catalogue", _work["catalogue"]);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
    }

    private string FirstConfiguration() =>
        Directory.EnumerateFiles(_work["catalogue/machines/tray-one/configurations"]).Order(StringComparer.Ordinal).First();
}
