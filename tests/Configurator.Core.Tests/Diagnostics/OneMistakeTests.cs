using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Diagnostics;

/// <summary>Whoever makes one mistake reads of one, at its place, and not of all that follows from it.</summary>
public class OneMistakeTests
{
    private static readonly string[] Faulty = ["[[x]]", "''", "*x"];

    public static TheoryData<string> Definitions { get; } =
        [.. BaseCatalogue.Whole.Paths.Where(path => path.EndsWith(".yaml", StringComparison.Ordinal))];

    // Law: nowhere in the format stands a list in a list, nothing at all, or an alias. Each value gets one of them in turn.
    [Theory]
    [MemberData(nameof(Definitions))]
    public void A_value_that_cannot_be_is_reported_once_at_its_line(string path) => Assert.All(
        Scalars(Root(path)).Select((value, position) => (value.Span, Instead: Faulty[position % Faulty.Length])),
        change => SaysOnce(path, change.Span, change.Instead));

    [Theory]
    [MemberData(nameof(Definitions))]
    public void A_misspelt_key_is_reported_once_at_its_line(string path) => Assert.All(
        Keys(Root(path)).Where(key => !IsChosen(key.Text)),
        key => SaysOnce(path, key.Span, $"{key.Text}{key.Text[^1]}"));

    [Theory]
    [MemberData(nameof(Definitions))]
    public void A_file_that_cannot_be_read_is_reported_once(string path)
    {
        var said = BaseCatalogue.With(path, "[").Check().Diagnostics;
        Assert.Equal(["CFG1004"], said.Select(diagnostic => diagnostic.Rule.Code));
    }

    private static void SaysOnce(string path, SourceSpan span, string instead)
    {
        var lines = BaseCatalogue.Whole.TextOf(path).Split('\n');
        ref var line = ref lines[span.Line - 1];
        line = line[..(span.Column - 1)] + instead + line[(span.Column - 1 + span.Length)..];
        var said = BaseCatalogue.With(path, string.Join('\n', lines)).Check().Diagnostics;
        Assert.True(
            said.Length == 1 && said[0].Span.Path == path && said[0].Span.Line == span.Line,
            $"{span} with {instead} says{string.Concat(Diagnostic.InOrder(said).Select(Short))}");
    }

    private static string Short(Diagnostic diagnostic) =>
        $"\n{diagnostic.Span} {diagnostic.Rule.Code} {diagnostic.Message}";

    /// <summary>Keys that a writer chooses: instances, fits, parameters, words.</summary>
    private static bool IsChosen(string key) =>
        key.Contains('/', StringComparison.Ordinal)
        || key is "film-eye" or "threshold" or "output" or "light" or "dark" or "tray-count";

    private static MappingSyntax Root(string path) =>
        YamlReader.Read(new(path, BaseCatalogue.Whole.TextOf(path))).Root!;

    private static IEnumerable<ScalarSyntax> Scalars(SyntaxNode node) => node switch
    {
        ScalarSyntax scalar => [scalar],
        SequenceSyntax list => list.Items.SelectMany(Scalars),
        MappingSyntax map => map.Entries.SelectMany(entry => Scalars(entry.Value)),
        _ => [],
    };

    private static IEnumerable<ScalarSyntax> Keys(SyntaxNode node) => node switch
    {
        SequenceSyntax list => list.Items.SelectMany(Keys),
        MappingSyntax map => map.Entries.SelectMany(entry => Keys(entry.Value).Prepend(entry.Key)),
        _ => [],
    };
}
