using System.Text.RegularExpressions;
using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Configurator.Core.Diagnostics;

namespace Configurator.Cli.Tests.Commands;

/// <summary>Examples of codes that only a publish can raise, laid over the base catalogue.</summary>
public sealed partial class PublishedExampleTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("CFG5201")]
    [InlineData("CFG6012")]
    public void A_publish_of_the_example_raises_the_code_of_the_page_and_no_other(string code)
    {
        Repository.Copy(Path.Combine(Repository.Root, "tests", "Cases", "base", "input"), _folder.Root);
        foreach (var fence in Fence().Matches(RuleBook.Page(code)!).Cast<Match>())
        {
            var file = _folder[fence.Groups["path"].Value];
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, fence.Groups["text"].Value);
        }

        var ran = Tool.Run("publish", "--catalogue", _folder.Root, "--to", _folder["_site"]);

        Assert.Equal(ExitCodes.Findings, ran.ExitCode);
        Assert.Equal(
            [code],
            Code().Matches(ran.Output).Select(match => match.Groups["code"].Value).ToHashSet(StringComparer.Ordinal),
            StringComparer.Ordinal);
    }

    [GeneratedRegex("error (?<code>CFG[0-9]{4})", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Code();

    [GeneratedRegex(
        @"^```\w+ (?<path>\S+)\n(?<text>.*?)^```$",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Fence();
}
