using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Inspecting;

namespace Configurator.Site.Tests.Inspecting;

public class RepeatsTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(Repeats.ListedMax)]
    public void Up_to_the_limit_all_are_listed(int count)
    {
        var folded = Repeats.Fold(Alike("a", count));
        Assert.Equal(count, folded.Length);
        Assert.All(folded, it => Assert.Empty(it.Notes));
    }

    [Theory]
    [InlineData(1, "and in 1 further places")]
    [InlineData(1000, "and in 1000 further places")]
    public void Beyond_it_the_rest_is_counted_at_the_last(int more, string note)
    {
        var folded = Repeats.Fold(Alike("a", Repeats.ListedMax + more));
        Assert.Equal(Repeats.ListedMax, folded.Length);
        Assert.Equal(note, Assert.Single(folded[^1].Notes).Message);
    }

    [Fact]
    public void Only_the_same_sentence_after_the_same_rule_repeats() => Assert.Equal(
        30, Repeats.Fold(Alike("a", 10).Concat(Alike("b", 20))).Length);

    [Fact]
    public void The_first_places_are_the_ones_that_are_listed() => Assert.Equal(
        Enumerable.Range(1, Repeats.ListedMax),
        Repeats.Fold(Alike("a", 50)).Select(it => it.Span.Line));

    private static IEnumerable<Diagnostic> Alike(string message, int count) => Enumerable.Range(1, count)
        .Select(
            line => new Diagnostic(InspectionDiagnostics.All[0], message, new SourceSpan("_site/a.html", line, 1, 0)));
}
