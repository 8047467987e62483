using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Configurator.Site;

namespace Configurator.Cli.Tests.Commands;

/// <summary><c>review</c> as its user types it.</summary>
public sealed class ReviewTests : IDisposable
{
    private const string Plan = "after/machines/tray-one/port-plan.yaml";
    private static readonly string Small = Path.Combine(Repository.Cases, "base", "input");

    private readonly TempFolder _folder = new();

    public ReviewTests()
    {
        Repository.Copy(Small, _folder["after"]);
        _folder.Write(Plan, File.ReadAllText(_folder[Plan]).Replace("tray-eye/1: main:1", "tray-eye/1: main:2", StringComparison.Ordinal));
    }

    public void Dispose() => _folder.Dispose();

    private Ran Review(params string[] more) => Tool.Run(["review", Small, _folder["after"], .. more]);

    [Fact]
    public void A_released_change_without_a_revision_step_exits_with_one()
    {
        var ran = Review();
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("Homes that moved (1, warning, home-moved)\n  `tray-count/tray-eye/1` on `tray-one`: `main:1` → `main:2`", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith("1 change stops it (`--fail-on error`)\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal("", ran.Errors);
    }

    [Theory]
    [InlineData("never", 0)]
    [InlineData("home-moved", 1)]
    [InlineData("machine-added", 0)]
    [InlineData("warning", 1)]
    [InlineData("sometimes", 2)]
    public void The_verdict_is_the_callers(string failOn, int exitCode) => Assert.Equal(exitCode, Review("--fail-on", failOn).ExitCode);

    [Fact]
    public void Nothing_changed_exits_with_zero()
    {
        var ran = Tool.Run("review", Small, Small);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.EndsWith("reviewed 0 changes: nothing changed in meaning\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_form_is_written_to_the_file_of_its_ending()
    {
        var ran = Review("--format", "github", "--out", _folder["r.md"], "--out", _folder["r.sarif"], "--out", _folder["r.json"], "--out", _folder["r.txt"]);
        Assert.StartsWith("::error file=machines/tray-one/configurations/salad.yaml,line=", ran.Output, StringComparison.Ordinal);
        Assert.StartsWith("## Review: 1 change stops it", File.ReadAllText(_folder["r.md"]), StringComparison.Ordinal);
        Assert.Contains("\"version\": \"2.1.0\"", File.ReadAllText(_folder["r.sarif"]), StringComparison.Ordinal);
        Assert.Contains("\"kind\": \"home-moved\"", File.ReadAllText(_folder["r.json"]), StringComparison.Ordinal);
        Assert.Equal(Review().Output, File.ReadAllText(_folder["r.txt"]));
        Assert.Equal(2, Review("--out", _folder["r.pdf"]).ExitCode);
        Assert.Equal(3, Review("--out", _folder["none/r.md"]).ExitCode);
    }

    // Source: workflow commands of GitHub Actions and SARIF 2.1.0 name files from the repository's top, where a workflow runs.
    [Fact]
    public void A_catalogue_below_the_repositorys_top_is_annotated_from_the_top()
    {
        var review = Tool.RunIn(_folder.Root, [], "review", Small, "after", "--format", "github", "--out", "r.sarif");
        Assert.StartsWith("::error file=after/machines/tray-one/configurations/salad.yaml,line=", review.Output, StringComparison.Ordinal);
        Assert.Contains("\"uri\": \"after/machines/tray-one/", File.ReadAllText(_folder["r.sarif"]), StringComparison.Ordinal);
        File.Move(_folder[Plan], _folder["elsewhere.yaml"]);
        var check = Tool.RunIn(_folder.Root, [], "check", "--catalogue", "after", "--format", "github");
        Assert.StartsWith("::error file=after/machines/tray-one/", check.Output, StringComparison.Ordinal);
        Assert.StartsWith("::error file=machines/", Tool.RunIn(_folder["after"], [], "check", "--format", "github").Output, StringComparison.Ordinal);
    }

    // Law: the log's rules are those of all assemblies, so that every result finds its rule.
    [Fact]
    public void The_sarif_log_knows_the_rules_of_every_stage()
    {
        var log = Review("--format", "sarif").Output;
        Assert.All(AllRules.Rules, rule => Assert.Contains($"\"id\": \"{rule.Code}\"", log, StringComparison.Ordinal));
        Assert.Contains(AllRules.Rules, rule => rule.Code.StartsWith("CFG6", StringComparison.Ordinal));
    }

    [Fact]
    public void A_preview_holds_both_sites_and_the_review_between_them()
    {
        var ran = Review("--fail-on", "never", "--site", _folder["preview"]);
        Assert.Equal(0, ran.ExitCode);
        var page = File.ReadAllText(_folder["preview/review.html"]);
        Assert.Contains("href=\"before/machines/tray-one/port-plan.html\"", page, StringComparison.Ordinal);
        Assert.Contains("href=\"machines/tray-one/port-plan.html\"", page, StringComparison.Ordinal);
        Assert.Contains("href=\"review.html\"", File.ReadAllText(_folder["preview/index.html"]), StringComparison.Ordinal);
        Assert.True(File.Exists(_folder["preview/before/machines/tray-one/port-plan.html"]));
    }

    [Fact]
    public void Without_a_sound_later_side_there_is_no_preview_and_the_review_still_speaks()
    {
        _folder.Write("after/options/lids/top-film.yaml", "option: top-film\n");
        var ran = Review("--site", _folder["preview"]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("home-moved", ran.Output, StringComparison.Ordinal);
        Assert.Contains("no preview was written", ran.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder["preview"]));
    }

    [Theory]
    [InlineData("no-such-revision")]
    [InlineData("./no-such-folder")]
    public void A_side_that_is_not_there_is_the_environments_fault(string side) => Assert.Equal(3, Tool.Run("review", side, Small).ExitCode);
}
