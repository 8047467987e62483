using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Loading;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

using Files = System.Collections.Immutable.ImmutableSortedDictionary<string, string>;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Good definitions to start from, and words that do harm in them.</summary>
internal static class Corpus
{
    public static Files Small { get; } = SmallCatalogue.Files;

    public static Files Base { get; } =
        BaseCatalogue.Whole.Paths.ToImmutableSortedDictionary(path => path, BaseCatalogue.Whole.TextOf, StringComparer.Ordinal);

    public static Files Demo { get; } = new[] { "machines", "options", "site-templates" }
        .SelectMany(top => Directory.EnumerateFiles(Path.Combine(Repository.Folder, top), "*", SearchOption.AllDirectories))
        .Where(path => path.EndsWith(".yaml", StringComparison.Ordinal) || path.EndsWith(".md", StringComparison.Ordinal))
        .ToImmutableSortedDictionary(
            path => Path.GetRelativePath(Repository.Folder, path).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);

    /// <summary>What the first stage makes of each of the three: files are read one by one, so what was not changed need
    /// not be read again.</summary>
    public static SyntaxSet Loaded(Files good) => good == Demo ? LoadedDemo.Value : good == Small ? LoadedSmall.Value : LoadedBase.Value;

    private static readonly Lazy<SyntaxSet> LoadedSmall = new(() => Load(Small));
    private static readonly Lazy<SyntaxSet> LoadedBase = new(() => Load(Base));
    private static readonly Lazy<SyntaxSet> LoadedDemo = new(() => Load(Demo));

    public static SourceSet Sources(Files files) => SourceSet.Of(files.Select(file => new SourceFile(file.Key, Encoding.UTF8.GetBytes(file.Value))));

    private static SyntaxSet Load(Files good)
    {
        var loaded = Loader.Load(Sources(good));
        Assert.Empty(loaded.Diagnostics);
        return loaded.Value;
    }

    /// <summary>Pieces that mean something to YAML, to Markdown, to a terminal or to the binder.</summary>
    public static ImmutableArray<string> Snippets { get; } =
    [
        "&a ", "*a", "<<: ", "!!str ", "!<x> ", "---\n", "...\n", "%YAML 1.2\n", "? ", ": ", "- ", "# ", "|\n", ">-\n", "|2\n", "[", "]", "{", "}",
        ",", "'", "\"", "\\", "\\x", "\\uD800", "\\0", "\t", "\n", "\n\n", "\r", "\r\n", "  ", "`", "@", "%", "\u0000", "\u001b[31m", "\u007f", "\u0085",
        "\u00a0", "\u200e", "\u202e", "\u2028", "\ufeff", "\uffff", "\ud83d\ude00", "\ud800", "\u0301", "null", "~", "true", "yes", "0x1F", "1e9", ".nan",
        "-1", "0", "999999999999999999999999", "0.1 mm", "-5 A", "12", "3 furlongs", "22 AWG", "1 EUR", "2 USD", "100 degF", "{en: x, es: y}",
        "{xx: {}}", "[[]]", "{all: []}", "{none: [{any: []}]}", "{option: x, exactly: 0}", "standard", "direct", "2026-02-30", "0001-01-01", "## Sales\n",
        "### Rinse\n", "```\n", "<script>", "::error::x", "##[x]", "../", "/", "main:99", "front:1", "a/b/1",
    ];

    /// <summary>Every word that stands in some definition: keys, ids, values.</summary>
    public static ImmutableArray<string> Words { get; } =
    [
        .. Small.Values.Concat(Base.Values)
            .SelectMany(text => text.Split([' ', '\n', ',', '[', ']', '{', '}', '"'], StringSplitOptions.RemoveEmptyEntries))
            .Select(word => word.TrimEnd(':'))
            .Where(word => word.Length > 0)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal),
    ];
}
