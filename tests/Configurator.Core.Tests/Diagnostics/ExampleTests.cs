using Configurator.Core.Diagnostics;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Diagnostics;

public class ExampleTests
{
    public static TheoryData<string> Codes { get; } = [.. RuleBook.Rules.Select(rule => rule.Code)];

    [Fact]
    public void The_base_catalogue_has_nothing_wrong_with_it() => Assert.Empty(BaseCatalogue.Whole.Check().Diagnostics);

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_example_of_a_page_raises_the_code_of_the_page_and_no_other(string code) =>
        Assert.Equal([code], Input(code).Check().Diagnostics.Select(diagnostic => diagnostic.Rule.Code).Distinct());

    [Theory]
    [MemberData(nameof(Codes))]
    public void What_an_example_raises_says_how_to_fix_it(string code) => Assert.All(
        Input(code).Check().Diagnostics,
        diagnostic => Assert.False(string.IsNullOrWhiteSpace(diagnostic.Fix?.Message), diagnostic.Message));

    [Theory]
    [MemberData(nameof(Codes))]
    public void What_an_example_raises_marks_text_that_is_there(string code)
    {
        var input = Input(code);
        Assert.All(
            input.Check().Diagnostics,
            diagnostic => Assert.True(input.Has(diagnostic.Span), diagnostic.Span.ToString()));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void An_example_shows_files_or_says_that_it_is_only_an_illustration(string code) => Assert.All(
        CodePage.Of(code).Example,
        block => Assert.Equal(HardExamples.ByCode.ContainsKey(code) ? "text" : InfoOf(block.Path!), block.Info));

    private static string InfoOf(string path) =>
        (path.EndsWith(".md", StringComparison.Ordinal) ? "markdown " : "yaml ") + path;

    private static BaseCatalogue Input(string code) => HardExamples.ByCode.TryGetValue(code, out var hard)
        ? hard
        : CodePage.Of(code).Example.Aggregate(
            BaseCatalogue.Whole, (catalogue, block) => catalogue.And(block.Path!, block.Text));
}
