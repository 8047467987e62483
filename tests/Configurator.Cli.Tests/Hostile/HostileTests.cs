using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>
/// Definitions made to do harm: findings in seconds, never a crash, never a hang, and an earlier site stays as it was.
/// What each case is to give stands in tests/Hostile/cases.txt.
/// </summary>
public sealed partial class HostileTests(ITestOutputHelper output, EarlierSite earlier) : IClassFixture<EarlierSite>
{
    /// <summary>Generous for a busy machine; the line printed for each case tells what it took.</summary>
    private static readonly TimeSpan Seconds = TimeSpan.FromSeconds(30);

    /// <summary>Whole and harmless, but minutes of work: published by night.</summary>
    private const string OfTenThousandPages = "files-10000-good";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<string> Cases => [.. HostileCase.All.Keys];

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task A_hostile_catalogue_gives_findings_in_seconds_and_an_earlier_site_stays(string name)
    {
        using var catalogue = new TempFolder();
        var hostile = HostileCase.All[name];
        hostile.Lay(catalogue);

        var clock = Stopwatch.StartNew();
        var ran = await Task.Run(() => Tool.Run("check", "--catalogue", catalogue.Root), Cancel).WaitAsync(Seconds, Cancel);
        var milliseconds = clock.ElapsedMilliseconds;

        var codes = CodesIn(ran.Output);
        Assert.Equal(hostile, new(name, ran.ExitCode, codes));
        Assert.DoesNotMatch(Deceptive(), ran.Output + ran.Errors);
        clock.Restart();
        var isPublished = name != OfTenThousandPages;
        if (isPublished)
        {
            Publish(hostile, catalogue);
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: exit {ran.ExitCode}, {(codes.Length > 0 ? codes : "no findings")}, check {milliseconds} ms{(isPublished ? $", publish {clock.ElapsedMilliseconds} ms" : "")}"));
    }

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Ten_thousand_pages_are_published()
    {
        using var catalogue = new TempFolder();
        HostileCase.All[OfTenThousandPages].Lay(catalogue);
        Publish(HostileCase.All[OfTenThousandPages], catalogue);
    }

    // The same by the built program as its user runs it: the cases that only its own stack, limits and templates judge.
    [Theory]
    [InlineData("alias-bomb")]
    [InlineData("deep-brackets-open")]
    [InlineData("pipe")]
    [InlineData("notes-deep-quotes")]
    [InlineData("titles-markup")]
    public void The_built_program_publishes_what_is_harmless_and_nothing_else(string name)
    {
        using var catalogue = new TempFolder();
        using var site = new TempFolder();
        var hostile = HostileCase.All[name];
        hostile.Lay(catalogue);
        earlier.CopyTo(site["site"]);

        var (ran, milliseconds) = HostileCase.Run(Seconds, "publish", "--to", site["site"], "--catalogue", catalogue.Root);

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} by the program alone: exit {ran.ExitCode}, publish {milliseconds} ms"));
        Assert.Equal(hostile.ExitCode, ran.ExitCode);
        Assert.Equal(ran.ExitCode == ExitCodes.Fine, earlier.Tree != site.Tree("site"));
    }

    [Fact]
    public void Every_case_stands_in_the_table_and_is_made_somewhere() =>
        Assert.Equal(string.Join(' ', HostileCase.All.Keys), string.Join(' ', HostileCase.Made.Order(StringComparer.Ordinal)));

    private void Publish(HostileCase hostile, TempFolder catalogue)
    {
        using var site = new TempFolder();
        earlier.CopyTo(site["site"]);

        var (exitCode, said) = EarlierSite.Publish(catalogue.Root, site["site"], "--format", "github");

        Assert.Equal(hostile.ExitCode, exitCode);
        Assert.DoesNotMatch(Deceptive(), said);
        Assert.All(said.Split('\n').Where(line => line.TrimStart().StartsWith("::", StringComparison.Ordinal)), line => Assert.Matches(Annotation(), line));
        if (exitCode == ExitCodes.Fine)
        {
            HarmlessSite.Check(site["site"]);
        }
        else
        {
            Assert.Equal(earlier.Tree, site.Tree("site"));
        }

        Assert.Equal(["site"], site.Names("."));
    }

    private static string CodesIn(string output) => string.Join(
        ' ', Codes().Matches(output).Select(code => code.Groups["code"].Value).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [GeneratedRegex("(error|warning|note) (?<code>CFG[0-9]{4})", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Codes();

    /// <summary>What a terminal or a build log would take for more than text.</summary>
    [GeneratedRegex("[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u2028\u2029\u202A-\u202E\u2066-\u2069]|##[a-z]*\\[", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Deceptive();

    [GeneratedRegex("^::(error|warning|notice) file=[^:]*,title=[^:]*::", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Annotation();
}
