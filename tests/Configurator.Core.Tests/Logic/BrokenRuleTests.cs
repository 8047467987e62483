using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Logic;

/// <summary>An order that breaks a rule is reported at the option concerned, with the rule and its reason as a note.</summary>
public class BrokenRuleTests
{
    private const string Agitator = "options/small/agitator.yaml";

    [Fact]
    public void Something_needed_is_missing() => Check.Small
        .Changing(Agitator, "offered-on", "requires: [{option: (|heads|), because: It stirs what is dosed}]\noffered-on")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, cup-check, [|agitator|]]")
        .Says(
            """
            CFG3001 `agitator` needs `heads`
            note: the rule stands here: It stirs what is dosed
            to fix: the nearest order that works: leave out `agitator`
            """);

    [Fact]
    public void Too_few_of_what_is_needed_are_ordered() => Check.Small
        .Changing(Agitator, "offered-on", "requires: [{option: (|heads|), at-least: 2}]\noffered-on")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, cup-check, heads, [|agitator|]]")
        .Says("CFG3001 `agitator` needs at least 2 times `heads`\nnote: the rule stands here");

    [Fact]
    public void Two_options_cannot_be_ordered_together() => Check.Small
        .Changing(Agitator, "offered-on", "not-with: [{option: (|cup-check|), because: The eye sees the stirrer}]\noffered-on")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, [|cup-check|], (|agitator|)]")
        .Says("CFG3002 `agitator` and `cup-check` cannot be ordered together\nnote: and this one\nnote: the rule stands here: The eye sees the stirrer");

    [Fact]
    public void Two_options_that_rule_each_other_out_are_one_mistake()
    {
        var said = Check.Small
            .Changing(Agitator, "offered-on", "not-with: [cup-check]\noffered-on")
            .Changing(SmallCatalogue.Option("cup-check"), "offered-on", "not-with: [agitator]\noffered-on")
            .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, cup-check, agitator]").Run();
        Assert.Single(said, diagnostic => diagnostic.Rule.Code == "CFG3002");
    }

    [Fact]
    public void What_comes_along_is_not_offered_here() => Check.Small
        .With("option: foam\ntitle: Foam\nsummary: Foam\noffered-on: []\n")
        .Changing(Agitator, "offered-on", "comes-with: [[|foam|]]\noffered-on")
        .Says("CFG3003 `agitator` comes with `foam`, which is not offered on `cup-one`");

    [Theory]
    [InlineData("exactly-one", "[heads]", "exactly one", "none is ordered")]
    [InlineData("one-or-more", "[heads]", "one or more", "none is ordered")]
    public void A_choice_that_nothing_is_taken_of_is_reported_at_the_order(string take, string options, string wanted, string taken) => Check.Small
        .Machine("take: exactly-one", "take: " + take)
        .Machine("choice: lid", "choice: (|lid|)")
        .Changing(SmallCatalogue.Plain, "configuration: plain", "configuration: [|plain|]")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", options)
        .Says($"CFG3004 `lid` takes {wanted} of `film` and `precut`; {taken}\nnote: the rule stands here: Every cup gets one lid");

    [Theory]
    [InlineData("exactly-one", "exactly one")]
    [InlineData("at-most-one", "at most one")]
    public void A_choice_that_too_much_is_taken_of_is_reported_at_the_first(string take, string wanted) => Check.Small
        .Machine("take: exactly-one", "take: " + take)
        .Machine("choice: lid", "choice: (|lid|)")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[[|film|], (|precut|), cup-check]")
        .Says($"CFG3004 `lid` takes {wanted} of `film` and `precut`; `film` and `precut` are ordered");

    [Fact]
    public void A_choice_that_does_not_apply_is_not_judged() => Check.Small
        .Machine("take: exactly-one", "take: exactly-one\n    when: heads")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[cup-check]")
        .Says();

    [Fact]
    public void A_rule_of_the_machine_is_broken() => Check.Small
        .Machine("rule: count-what-is-checked", "rule: (|count-what-is-checked|)")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, [|counter|]]")
        .Says(
            """
            CFG3005 an order with `counter` needs `cup-check`
            note: the rule stands here: Only a cup that is seen can be counted
            """);

    [Fact]
    public void What_must_never_be_is_ordered() => Check.Small
        .Machine("    when: counter\n    need: cup-check", "    never: {all: [film, heads]}")
        .Machine("rule: count-what-is-checked", "rule: (|count-what-is-checked|)")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[[|film|], (|heads|), cup-check]")
        .Says("CFG3005 `film` and `heads` cannot be ordered together");

    [Fact]
    public void An_option_is_ordered_in_too_small_a_number() => Check.Small
        .Changing(SmallCatalogue.Option("heads"), "from: 1", "from: 2")
        .Changing(SmallCatalogue.Option("heads"), "option: heads", "option: (|heads|)")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, [|heads|], cup-check]")
        .Says("CFG3006 `heads` can be ordered 2 times, not 1");

    // By hand: two heads count two each, one agitator one: five.
    [Fact]
    public void A_limit_of_the_machine_is_exceeded() => Check.Small
        .Machine("standard:", "limits:\n  - {limit: (|outputs|), title: Outputs, at-most: 4, counts: [{option: heads, each: 2}, {option: agitator}], because: The card has four}\nstandard:")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, cup-check, [|heads|], (|agitator|)]")
        .Changing(SmallCatalogue.Plain, "recipes:", "quantities: {heads: 2}\nrecipes:")
        .Says("CFG3007 `outputs` allows at most 4 in all; this order counts 5\nnote: and this one\nnote: the rule stands here: The card has four");

    [Fact]
    public void All_broken_rules_are_reported_together() => Check.Small
        .Changing(Agitator, "offered-on", "requires: [(|heads|)]\noffered-on")
        .Machine("choice: lid", "choice: (|lid|)")
        .Machine("rule: count-what-is-checked", "rule: (|count-what-is-checked|)")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[[|film|], (|precut|), [|agitator|], [|counter|]]")
        .Says(
            "CFG3004 `lid` takes exactly one of `film` and `precut`; `film` and `precut` are ordered",
            "CFG3001 `agitator` needs `heads`",
            "CFG3005 an order with `counter` needs `cup-check`");
}
