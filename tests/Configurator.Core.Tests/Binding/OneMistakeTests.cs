using System.Collections.Immutable;
using Configurator.Core.Loading;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Law: one mistake, one diagnostic, at the mistake, whatever depends on what is wrong.</summary>
public class OneMistakeTests
{
    public static TheoryData<string> Files { get; } = [.. SmallCatalogue.Files.Keys];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_value_that_is_nonsense_is_reported_once_where_it_stands(string path) => Assert.All(Values(path), value => Once(path, value, "\"?!\""));

    // The first value of a map inside a definition is mostly a name that others mention: to change it is as many mistakes.
    [Theory]
    [MemberData(nameof(Files))]
    public void A_name_of_nothing_is_reported_once_where_it_stands(string path)
    {
        var declared = Firsts(CheckLoading.Root(SmallCatalogue.Files[path])).Select(first => first.Span).ToHashSet();
        Assert.All(Values(path).Where(value => !declared.Contains(value.Span)), value => Once(path, value, "zzz-nothing"));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_value_that_is_an_alias_is_reported_once_where_it_stands(string path) => Assert.All(Values(path), value => Once(path, value, "*zzz"));

    /// <summary>Nothing where the nonsense is a text like any other; else one diagnostic at the line and column of the value.</summary>
    private static void Once(string path, ScalarSyntax value, string instead)
    {
        var lines = SmallCatalogue.Files[path].Split('\n');
        ref var line = ref lines[value.Span.Line - 1];
        line = line[..(value.Span.Column - 1)] + instead + line[(value.Span.Column - 1 + value.Span.Length)..];
        var said = Check.Small.At(path, string.Join('\n', lines)).Run().ToList();
        var listed = string.Join('\n', said.Select(diagnostic => $"{diagnostic.Rule.Code} {diagnostic.Message} @ {diagnostic.Span}"));
        Assert.True(said.Count <= 1, $"{value.Span} is {instead} for {value.Text}:\n{listed}");
        Assert.All(said, diagnostic => Assert.Equal((path, value.Span.Line), (diagnostic.Span.Path, diagnostic.Span.Line)));
    }

    private static ImmutableArray<ScalarSyntax> Values(string path) => [.. In(CheckLoading.Root(SmallCatalogue.Files[path]))];

    private static IEnumerable<SyntaxNode> Firsts(SyntaxNode node) => node switch
    {
        SequenceSyntax list => list.Items.SelectMany(Firsts),
        MappingSyntax map => map.Entries.SelectMany(entry => Firsts(entry.Value)).Prepend(map.Entries[0].Value),
        _ => [],
    };

    private static IEnumerable<ScalarSyntax> In(SyntaxNode node) => node switch
    {
        ScalarSyntax scalar => [scalar],
        SequenceSyntax list => list.Items.SelectMany(In),
        MappingSyntax map => map.Entries.SelectMany(entry => In(entry.Value)),
        _ => [],
    };
}
