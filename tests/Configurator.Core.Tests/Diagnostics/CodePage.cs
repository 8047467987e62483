using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Tests.Diagnostics;

/// <summary>A fenced block of a page: what stands behind the fence, and the text in it.</summary>
/// <param name="Info"><c>LANG PATH</c> for a file of the catalogue; <c>text</c> for a mere illustration.</param>
internal sealed record ExampleBlock(string Info, string Text)
{
    public string? Path => Info.Split(' ') is [_, var path] ? path : null;
}

/// <summary>The page of a code, taken apart.</summary>
internal sealed partial record CodePage(
    string FirstLine, ImmutableArray<string> Sections, ImmutableArray<ExampleBlock> Example)
{
    public static CodePage Of(string code)
    {
        var text = RuleBook.Page(code) ?? throw new InvalidOperationException($"{code} has no page");
        var prose = Fence().Replace(text, "");
        return new(
            text.Split('\n')[0],
            [.. prose.Split('\n').Where(IsSection).Select(line => line[3..])],
            [.. Fence().Matches(text).Select(Block)]);
    }

    private static bool IsSection(string line) => line.StartsWith("## ", StringComparison.Ordinal);

    private static ExampleBlock Block(Match fenced) => new(fenced.Groups["info"].Value, fenced.Groups["text"].Value);

    [GeneratedRegex(
        "^```(?<info>[^\n]+)\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Fence();
}
