using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class PortPlanBindingTests
{
    [Fact]
    public void An_instance_that_nothing_fits_is_marked() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  cup-check/cup-eye/1", "  [|cup-check/cup-ey/1|]")
        .Says("CFG2003 there is no fit instance `cup-check/cup-ey/1`\nto fix: replace it with `cup-check/cup-eye/1`");

    [Fact]
    public void An_instance_that_has_a_line_already_is_not_offered_again() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  standard/guard/1", "  [|cup-check/cup-eye/2|]: front:4\n  standard/guard/1")
        .Says("CFG2003 there is no fit instance `cup-check/cup-eye/2`\nto fix: define it, or name another fit instance");

    [Fact]
    public void An_instance_of_an_option_that_does_not_exist_is_marked() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  standard/guard/1", "  [|printer/ink-head/1|]: front:4\n  standard/guard/1")
        .Says("CFG2003 there is no fit instance `printer/ink-head/1`");

    [Theory]
    [InlineData("cup-eye/1")]
    [InlineData("cup-check/cup-eye/0")]
    [InlineData("cup-check/cup-eye/01")]
    [InlineData("Cup-check/cup-eye/1")]
    public void An_instance_is_named_by_source_fit_and_ordinal(string key) => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  standard/guard/1", $"  [|{key}|]: front:4\n  standard/guard/1")
        .Says($"CFG2006 `{key}` is not `SOURCE/FIT/ORDINAL`, such as `cup-presence/cup-eye/1`");

    [Theory]
    [InlineData("front")]
    [InlineData("front:0")]
    [InlineData("front:100")]
    [InlineData("front 1")]
    [InlineData("Direct")]
    public void A_home_is_a_master_and_a_port_or_direct(string home) => Check.Small
        .Changing(SmallCatalogue.PortPlan, "front:1", $"[|{home}|]")
        .Says($"CFG2006 `{home}` is not `MASTER:PORT` such as `front:3`, `MASTER:PORT/pin-2` behind a splitter, or `direct`");

    [Fact]
    public void An_unknown_master_is_marked_and_the_nearest_offered() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "front:1", "[|frnt|]:1")
        .Says("CFG2003 there is no master or hub `frnt`\nto fix: replace it with `front`");

    [Fact]
    public void An_unknown_master_in_quotes_is_marked_inside_them() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "front:1", "'[|frnt|]:1'")
        .Says("CFG2003 there is no master or hub `frnt`\nto fix: replace it with `front`");

    [Fact]
    public void A_port_that_the_master_does_not_have_is_reported_with_those_it_has() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "front:1", "[|front:5|]")
        .Says("CFG2003 there is no port 5 on `front`\nto fix: use one of its ports 1, 2, 3, 4");

    [Fact]
    public void A_port_that_the_hub_does_not_have_is_reported() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "count-hub:1", "[|count-hub:5|]")
        .Says("CFG2003 there is no port 5 on `count-hub`");

    [Fact]
    public void A_plan_of_no_machine_is_reported() => Check.Small
        .With("port-plan: [|cup-two|]\nhomes: {}\n")
        .Says("CFG2003 there is no machine `cup-two`\nto fix: define it, or name another machine");

    [Fact]
    public void An_instance_with_two_homes_is_a_key_given_twice() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  cup-check/cup-eye/1: front:1", "  (|cup-check/cup-eye/1|): front:1\n  [|cup-check/cup-eye/1|]: front:4")
        .Says("CFG1009 `cup-check/cup-eye/1` stands twice in one place");

    [Fact]
    public void Lines_of_a_faulty_option_are_not_judged() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "device: eye", "device: [|eyes|]")
        .Says("CFG2003 there is no device `eyes`");

    [Fact]
    public void Two_wrong_lines_are_both_reported_and_the_others_hold() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "front:1", "[|frnt|]:1")
        .Changing(SmallCatalogue.PortPlan, "extra:3", "[|extra:9|]")
        .Says("CFG2003 there is no master or hub `frnt`", "CFG2003 there is no port 9 on `extra`");
}
