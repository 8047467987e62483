using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Conditions and rules as they are written.</summary>
public class RuleBindingTests
{
    [Fact]
    public void A_rule_says_what_it_needs_or_what_must_never_be() => Check.Small
        .Machine("rule: count-what-is-checked", "rule: [|count-what-is-checked|]")
        .Machine("    need: cup-check\n", "")
        .Says("CFG2005 `need` is missing: a rule has `need` or `never`\nto fix: add `need:`");

    [Fact]
    public void A_rule_does_not_say_both() => Check.Small
        .Machine("rule: count-what-is-checked", "rule: [|count-what-is-checked|]")
        .Machine("need: cup-check", "need: cup-check\n    never: precut")
        .Says("CFG2006 `need` and `never` stand together; only one of them may\nto fix: keep one, and write a second entry for the other");

    [Theory]
    [InlineData("{[|al|]: [film, precut]}", "al", "`all`")]
    [InlineData("{option: heads, [|at-leest|]: 2}", "at-leest", "`at-least`")]
    [InlineData("{option: heads, [|because|]: x}", "because", "use one of")]
    public void A_condition_has_only_its_own_keys(string condition, string key, string fix)
    {
        var check = Check.Small.Machine("need: cup-check", $"need: {condition}");
        check.Says($"CFG2004 a condition has no key `{key}`");
        Assert.Contains(fix, Assert.Single(check.Run()).Fix!.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[|{|]option: heads, all: [film]}")]
    [InlineData("{all: [|film|]}")]
    [InlineData("{any: [|{|]option: film}}")]
    [InlineData("[|{|]at-least: 2}")]
    [InlineData("[|{|]all: [film], at-least: 2}")]
    [InlineData("{option: [|{|]all: [film]}}")]
    public void A_condition_that_says_no_one_thing_is_reported(string condition) => Check.Small
        .Machine("need: cup-check", $"need: {condition}")
        .Says("CFG2006 expected an option, or `{all: [...]}`, `{any: [...]}`, `{none: [...]}`, `{option: ..., at-least: 2}`");

    [Theory]
    [InlineData("{option: heads, at-least: [|two|]}")]
    [InlineData("{option: heads, exactly: [|-1|]}")]
    [InlineData("{option: heads, at-most: [|1.5|]}")]
    public void A_count_in_a_condition_is_a_whole_number(string condition) => Check.Small
        .Machine("need: cup-check", $"need: {condition}")
        .Says("CFG2006 expected a whole number from 0 to 1000");

    [Fact]
    public void A_malformed_option_in_a_condition_is_reported_as_an_id() => Check.Small
        .Machine("need: cup-check", "need: {any: [film, [|Cup check|]]}")
        .Says("CFG2007 `Cup check` is not made of lower-case words and digits joined by hyphens\nto fix: replace it with `cup-check`");

    [Theory]
    [InlineData("not-with: [[|{|]all: [precut, counter]}]")]
    [InlineData("comes-with: [[|{|]option: heads, at-least: 2}]")]
    public void What_is_linked_is_a_single_option(string line) => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "offered-on: [cup-one]", "offered-on: [cup-one]\n" + line)
        .Says("CFG2006 expected an option, or `{option: ..., because: ...}`");

    [Theory]
    [InlineData("film", "`film`")]
    [InlineData("[film, precut]", "`film` and `precut`")]
    [InlineData("{all: [film, precut]}", "`film` and `precut`")]
    [InlineData("{any: [film, precut, heads]}", "`film`, `precut` or `heads`")]
    [InlineData("{none: [film, precut]}", "no `film` and no `precut`")]
    [InlineData("{option: heads, at-least: 2}", "at least 2 times `heads`")]
    [InlineData("{option: heads, at-most: 1}", "at most 1 times `heads`")]
    [InlineData("{option: heads, exactly: 2}", "exactly 2 times `heads`")]
    [InlineData("{option: heads, at-least: 1, at-most: 2}", "1 to 2 times `heads`")]
    [InlineData("{option: heads}", "`heads`")]
    [InlineData("{any: [film, {all: [precut, heads]}]}", "`film` or (`precut` and `heads`)")]
    [InlineData("{all: [film], none: [heads]}", "`film` and no `heads`")]
    public void A_condition_is_read_as_it_is_written(string condition, string sentence)
    {
        var rule = Assert.Single(Check.Small.Machine("need: cup-check", $"need: {condition}").TheMachine.Rules);
        Assert.Equal(sentence, ConditionText.Of(rule.Need));
    }

    [Fact]
    public void Never_is_the_contrary_of_its_condition()
    {
        var rule = Assert.Single(Check.Small.Machine("need: cup-check", "never: {all: [film, heads]}").TheMachine.Rules);
        Assert.Equal("no (`film` and `heads`)", ConditionText.Of(rule.Need));
    }

    [Fact]
    public void Because_is_kept_with_every_sort_of_rule()
    {
        var check = Check.Small.Changing(
            SmallCatalogue.Option("agitator"), "offered-on: [cup-one]",
            "offered-on: [cup-one]\nrequires: [{any: [film, precut], because: one}]\nnot-with: [{option: heads, because: two}]\ncomes-with: [{option: cup-check, because: three}]");
        var option = check.Catalogue.Options[new("agitator")];
        Assert.Equal(["one", "two", "three"], new Text?[] { option.Requires[0].Because, option.NotWith[0].Because, option.ComesWith[0].Because }.Select(text => text!.ToString()));
        Assert.Equal(("Every cup gets one lid", "Only a cup that is seen can be counted"),
            (check.TheMachine.Choices[0].Because!.ToString(), check.TheMachine.Rules[0].Because!.ToString()));
    }

    [Fact]
    public void A_choice_with_an_unknown_option_is_left_out_and_nothing_follows_from_that() => Check.Small
        .Machine("of: [film, precut]", "of: [film, [|preecut|]]")
        .Says("CFG2003 there is no option `preecut`");
}
