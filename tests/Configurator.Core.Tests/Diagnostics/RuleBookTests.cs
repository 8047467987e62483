using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Tests.Diagnostics;

public class RuleBookTests
{
    private static readonly string[] Sections = ["What it means", "Example", "How to fix", "Why we check it"];

    public static TheoryData<string> CodesOfThisAssembly { get; } = [.. RuleBook.Rules.Select(rule => rule.Code)];

    public static TheoryData<string> CodesWithAPage { get; } = [.. RuleBook.Codes];

    [Fact]
    public void A_code_is_given_to_one_rule_only() =>
        Assert.Equal(RuleBook.Rules.Select(rule => rule.Code).Distinct(), RuleBook.Rules.Select(rule => rule.Code));

    [Fact]
    public void No_two_rules_have_the_same_title() =>
        Assert.Equal(RuleBook.Rules.Length, RuleBook.Rules.Select(rule => rule.Title).Distinct().Count());

    [Theory]
    [MemberData(nameof(CodesWithAPage))]
    public void A_code_names_its_stage_with_its_first_digit(string code) =>
        Assert.True(Regex.IsMatch(code, @"^CFG[1-6]\d{3}$", RegexOptions.None, TimeSpan.FromSeconds(1)));

    [Theory]
    [MemberData(nameof(CodesOfThisAssembly))]
    public void The_page_of_a_code_is_headed_by_the_title_of_its_rule(string code)
    {
        var rule = RuleBook.Rules.Single(rule => rule.Code == code);
        Assert.Equal($"# {code}: {rule.Title}", CodePage.Of(code).FirstLine);
    }

    [Theory]
    [MemberData(nameof(CodesWithAPage))]
    public void A_page_says_what_it_means_shows_an_example_and_gives_the_fix_and_the_reason(string code) =>
        Assert.Equal(Sections, CodePage.Of(code).Sections);

    [Theory]
    [MemberData(nameof(CodesWithAPage))]
    public void A_page_of_any_stage_starts_with_its_code_and_a_title(string code) =>
        Assert.StartsWith($"# {code}: ", CodePage.Of(code).FirstLine, StringComparison.Ordinal);

    [Fact]
    public void Every_page_of_the_first_four_stages_belongs_to_a_rule() =>
        Assert.Equal(RuleBook.Rules.Select(rule => rule.Code), RuleBook.Codes.Where(code => code[3] <= '4'));

    [Theory]
    [MemberData(nameof(CodesWithAPage))]
    public void A_page_can_be_read_on_a_terminal(string code) =>
        Assert.All(RuleBook.Page(code)!.Split('\n'), line => Assert.True(line.Length <= 120, line));

    [Fact]
    public void A_code_that_does_not_exist_has_no_page() => Assert.Null(RuleBook.Page("CFG0000"));
}
