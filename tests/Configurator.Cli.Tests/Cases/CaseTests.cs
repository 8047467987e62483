using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Cases;

/// <summary>
/// Whole runs on small catalogues. Each folder below tests/Cases has <c>input</c>, laid over the input of <c>base</c>, and
/// <c>expected</c>: <c>check.txt</c> is what <c>check</c> prints, <c>site</c> are pages that <c>publish</c> writes.
/// After a wanted change, run the tests with UPDATE_EXPECTED=1 and review the difference like code.
/// </summary>
public sealed class CaseTests
{
    private static readonly bool IsUpdating = Environment.GetEnvironmentVariable("UPDATE_EXPECTED") == "1";

    /// <summary>Pages that only repeat what is tested elsewhere: one a code, and the assets.</summary>
    private static readonly string[] LeftOut = ["findings/", "assets/"];

    public static TheoryData<string> All =>
        [.. Directory.EnumerateDirectories(Repository.Cases).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(All))]
    public void Check_prints_what_is_expected(string name)
    {
        using var catalogue = Lay(name);

        var ran = Tool.RunProgram("check", "--catalogue", catalogue.Root);

        Compare(Path.Combine(Repository.Cases, name, "expected", "check.txt"), ran.Output);
        Assert.Equal(ran.Output.Contains(": error CFG", StringComparison.Ordinal) ? ExitCodes.Findings : ExitCodes.Fine, ran.ExitCode);
    }

    [Fact]
    public void Publish_writes_the_expected_pages()
    {
        using var catalogue = Lay("base");
        using var target = new TempFolder();

        var ran = Tool.Run("publish", "--to", target["site"], "--catalogue", catalogue.Root, "--revision", "4f2a91c", "--date", "2026-10-02");

        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        var expected = Path.Combine(Repository.Cases, "base", "expected", "site");
        var pages = Pages(target["site"]);
        if (IsUpdating)
        {
            Directory.Delete(expected, recursive: true);
        }
        else
        {
            Assert.Equal(Pages(expected), pages);
        }

        foreach (var page in pages)
        {
            Compare(Path.Combine(expected, page), File.ReadAllText(Path.Combine(target["site"], page)));
        }
    }

    private static string[] Pages(string site) =>
        [.. Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(site, file).Replace('\\', '/'))
            .Where(path => path != "SHA256SUMS" && !path.EndsWith(".xlsx", StringComparison.Ordinal) && !LeftOut.Any(start => path.StartsWith(start, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal)];

    private static TempFolder Lay(string name)
    {
        var catalogue = new TempFolder();
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), catalogue.Root);
        Repository.Copy(Path.Combine(Repository.Cases, name, "input"), catalogue.Root);
        return catalogue;
    }

    private static void Compare(string path, string actual)
    {
        if (IsUpdating)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
        }

        Assert.Equal(File.ReadAllText(path), actual);
    }
}
