using Configurator.Core.Diagnostics;
using Configurator.Core.Review;
using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>What keeps its name and is not what it was: devices, cores, orders, limits.</summary>
public class SameNameTests
{
    private const string Guard = "options/devices/guard-switch.yaml";

    private const string Leads =
        """

        leads:
          conductor: 0.5 mm2
          jacket: PUR (ether)
          cores:
            - {core: "1", at: A1, carries: "24 V supply"}
            - {core: "2", at: A2, carries: "0 V"}

        """;

    private static readonly BaseCatalogue Wired = ReviewPair.Appending(BaseCatalogue.Whole, Guard, Leads);

    // Source: the edit itself; a core that moves is a wire that a wireman lands elsewhere.
    [Fact]
    public void A_core_that_lands_elsewhere_is_told_and_needs_a_revision_step()
    {
        var report = ReviewPair.Compare(Wired, Wired.Replacing(Guard, "at: A2", "at: B2"));
        var change = report.The("cores-changed");
        Assert.Equal((Severity.Warning, "`guard-switch`"), (change.Level, change.Subject));
        Assert.Equal(["leads cores 2: at A2, carries 0 V → at B2, carries 0 V"], change.Details);
        Assert.Equal(["salad"], change.Configurations);
        Assert.Equal(Guard, change.Line!.Value.Path);
        var released = report.The("released-changed");
        Assert.Equal("revision A as before, but other cores; give it a new revision, or undo what changed it", released.Remark);
        Assert.Equal(["cores: was `standard/guard/1 core 2 at A2, 0 V`; is `standard/guard/1 core 2 at B2, 0 V`"], released.Details);
    }

    [Fact]
    public void A_device_that_is_redefined_tells_each_value()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed);
        var change = report.The("device-redefined");
        Assert.Equal(("`contrast-eye`", "price: 240 EUR → 250 EUR"), (change.Subject, Assert.Single(change.Details)));
        Assert.Equal(ReviewPair.Eye, change.Line!.Value.Path);
    }

    [Fact]
    public void More_values_than_can_be_read_are_counted()
    {
        const string More =
            """
            parameters:
              - {parameter: gain, title: Gain, index: 71, type: uint8, words: {low: 0, high: 1}}
              - {parameter: edge, title: Edge, index: 72, type: uint8, words: {low: 0, high: 1}}

            """;
        var changed = BaseCatalogue.Whole
            .Replacing(ReviewPair.Eye, "current: 35 mA", "current: 36 mA")
            .Replacing(ReviewPair.Eye, "parameters:\n", More);
        var details = ReviewPair.Compare(BaseCatalogue.Whole, changed).The("device-redefined").Details;
        Assert.Equal(12, details.Length);
        Assert.Equal(("current: 35 mA → 36 mA", "and 2 more values"), (details[0], details[^1]));
    }

    // Source: the edit itself; the guard switch reports on two channels before and on one after.
    [Fact]
    public void A_signal_that_the_controller_no_longer_gets_is_told()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole.Replacing(Guard, "inputs: 2", "inputs: 1"));
        Assert.Contains(report.Changes, change =>
            change is { Kind.Id: "signals-changed", Level: Severity.Warning, After: "" }
            && change.Subject.StartsWith("`standard/guard/1`", StringComparison.Ordinal));
    }

    // Source: salad orders gas-flush, reject, top-film, tray-count; all four are in the result whoever ticks them.
    [Fact]
    public void An_order_that_comes_to_something_else_is_told()
    {
        var report = ReviewPair.Compare(
            BaseCatalogue.Whole,
            BaseCatalogue.Whole.Replacing(ReviewPair.Salad, "quantities: {tray-count: 2}\n", ""));
        var change = report.The("order-edited");
        Assert.Equal(("2 × `tray-count`", "`tray-count`", "released, revision A"), (change.Before, change.After, change.Remark));
    }

    [Fact]
    public void An_order_that_leaves_to_the_rules_what_it_ticked_is_a_note()
    {
        const string With = "comes-with:\n  - {option: reject, because: Gas trays are checked}\n";
        var bringing = ReviewPair.Appending(BaseCatalogue.Whole, "options/gas/gas-flush.yaml", With);
        var report = ReviewPair.Compare(bringing, bringing.Replacing(ReviewPair.Salad, "[gas-flush, reject, top-film, tray-count]", "[gas-flush, top-film, tray-count]"));
        var change = report.The("order-rewritten");
        Assert.Equal((Severity.Note, "`reject`", ""), (change.Level, change.Before, change.After));
        Assert.StartsWith("the same result, since rules bring it along", change.Remark, StringComparison.Ordinal);
    }

    // Source: by hand; master main has 5 of its 8 ports free in the worst order.
    [Fact]
    public void A_limit_that_is_just_reached_is_a_warning()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole.Replacing(ReviewPair.Machine, "spare-ports: 1", "spare-ports: 5"));
        var change = Assert.Single(report.Changes, change => change.Kind.Id == "limit-reached" && change.Subject == "`ports.spare/main`");
        Assert.Equal((Severity.Warning, "0"), (change.Level, change.After));
        Assert.Contains(": 5, at least 5", change.Remark, StringComparison.Ordinal);
    }

    // Source: by hand as in ReviewPairTests: of the 10 orders before, film alone has no tray eye; of the 11 after, two
    // have reject and snap lid.
    [Fact]
    public void Rules_that_came_and_went_say_what_each_rules_out()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed);
        Assert.Equal("rules out 1, 10 %; The film stops when trays stop", report.The("rule-added").Remark);
        Assert.Equal("ruled out 2, 18 %; A snap lid comes off where the reject belt turns down", report.The("rule-removed").Remark);
    }

    [Fact]
    public void Pages_of_one_sort_that_changed_in_the_same_place_share_a_line()
    {
        var lead = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed).The("rule-added");
        var kind = Core.Review.Kinds.SiteKinds.PageChanged;
        Change[] pages =
        [
            new(kind, "`machines/a/configurations/x/parts.html`", []) { After = "Parts" },
            new(kind, "`machines/a/configurations/y/parts.html`", []) { After = "Parts" },
            new(kind, "`machines/a/configurations/y/wiring.html`", []) { After = "Plug list" },
            new(kind, "`options/o.html`", []) { After = "Facts" },
            new(kind, "`options/p.html`", []) { After = "Facts" },
        ];
        Assert.Equal(
            ["`parts.html` of 2 configurations", "`machines/a/configurations/y/wiring.html`", "`*.html` of 2 options"],
            PageGroups.Of([.. pages]).Select(page => page.Subject));
        Assert.Equal([lead], PageGroups.Of([lead]));
    }

    // Law: a verdict without failures counts the kinds that weigh more than a note.
    [Fact]
    public void A_verdict_that_fails_nothing_says_what_needs_a_decision()
    {
        var report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed);
        var kinds = report.Changes.Where(change => change.Level > Severity.Note).Select(change => change.Kind).Distinct().Count();
        Assert.Equal(
            FormattableString.Invariant($"nothing fails the check; {kinds} kinds of change need a decision"),
            ReviewVerdict.Parse("never")!.Say(report));
    }
}
