using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class FitBindingTests
{
    private static readonly string Heads = SmallCatalogue.Option("heads");

    [Fact]
    public void A_fit_name_taken_by_another_option_is_reported_at_the_second() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "fit: stirrer", "fit: (|stirrer|)")
        .Changing(SmallCatalogue.Option("heads"), "fit: dose-valve", "fit: [|stirrer|]")
        .Changing(SmallCatalogue.PortPlan, "heads/dose-valve/1", "heads/stirrer/1")
        .Changing(SmallCatalogue.PortPlan, "heads/dose-valve/2", "heads/stirrer/2")
        .Says("CFG2008 the fit name on `cup-one` `stirrer` is already taken\nnote: it is taken here\nto fix: choose another name");

    [Fact]
    public void A_fit_name_taken_by_a_master_is_reported() => Check.Small
        .Machine("master: extra", "master: (|extra|)")
        .Changing(SmallCatalogue.Option("agitator"), "fit: stirrer", "fit: [|extra|]")
        .Says("CFG2008 the fit name on `cup-one` `extra` is already taken\nnote: it is taken here");

    // Designations drop the hyphens: cup-eye and cupeye would both be CUPEYE.
    [Fact]
    public void Fit_names_that_differ_in_hyphens_alone_are_the_same() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "fit: cup-eye", "fit: [|cup-eye|]")
        .Changing(SmallCatalogue.Option("agitator"), "fit: stirrer", "fit: (|cupeye|)")
        .Says("CFG2008 the fit name on `cup-one` `cup-eye` is already taken\nnote: it is taken here");

    [Fact]
    public void A_fit_per_quantity_has_a_station_for_each_that_can_be_ordered() => Check.Small
        .Changing(Heads, "fit: dose-valve", "fit: [|dose-valve|]")
        .Changing(Heads, "to: 2", "to: 3")
        .Says(
            """
            CFG2020 option `heads` has up to 3, but its fit `dose-valve` has 2 stations
            to fix: name one station for each that can be ordered
            """);

    [Fact]
    public void A_fit_per_quantity_needs_an_option_with_a_quantity() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "fit: stirrer", "per: quantity, fit: [|stirrer|]")
        .Says("CFG2020 option `agitator` has no quantity, but its fit `stirrer` has 1 station");

    [Fact]
    public void A_standard_fit_has_no_quantity() => Check.Small
        .Machine("fit: guard", "per: quantity, fit: [|guard|]")
        .Says("CFG2020 option `guard` has no quantity, but its fit `guard` has 1 station");

    [Fact]
    public void An_option_is_not_ordered_at_most_fewer_times_than_at_least() => Check.Small
        .Changing(Heads, "quantity: {from: 1, to: 2", "quantity: {from: 3, to: [|2|]")
        .Says(
            """
            CFG2020 option `heads` can be ordered at most fewer times than at least
            to fix: swap `from` and `to`
            """);

    [Theory]
    [InlineData("from: 1", "from: [|0|]", "0")]
    [InlineData("to: 2", "to: [|61|]", "61")]
    public void An_option_is_ordered_one_to_sixty_times(string was, string now, string count) => Check.Small
        .Changing(Heads, was, now)
        .Says($"CFG2013 `{count}` is not a whole number from 1 to 60");

    [Fact]
    public void What_differs_on_a_machine_is_bound_for_that_machine() => Check.Small
        .Changing(Heads, "stations: [filler, outfeed]", "stations: [filler]")
        .Changing(Heads, "per: quantity}", "per: quantity, on: {cup-one: {stations: [filler, outfeed], device: valves}}}")
        .Says();

    [Fact]
    public void An_unknown_station_that_differs_on_a_machine_is_reported() => Check.Small
        .Changing(Heads, "per: quantity}", "per: quantity, on: {cup-one: {stations: [filler, [|outfed|]]}}}")
        .Says("CFG2003 there is no station `outfed`\nto fix: replace it with `outfeed`");

    [Fact]
    public void An_unknown_device_that_differs_on_a_machine_is_reported() => Check.Small
        .Changing(Heads, "per: quantity}", "per: quantity, on: {cup-one: {device: [|valve|]}}}")
        .Says("CFG2003 there is no device `valve`\nto fix: replace it with `valves`");

    [Fact]
    public void A_word_that_touches_nothing_in_the_box_is_reported() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "touches-box: [drive]", "touches-box: [[|motor|]]")
        .Says("CFG2012 `motor` is not one of `direct-input`, `drive`, `heater-circuit`, `panel-part`, `safety-inputs`, `safety-outputs`, `supply`");

    [Theory]
    [InlineData("wiring: inside", "wiring: [|outside|]", "`outside` is not one of `direct`, `inside`, `port`", "to fix: use one of `direct`, `inside`, `port`")]
    [InlineData("wiring: inside", "wiring: inside, per: [|options|]", "`options` is not one of `option`, `quantity`", "to fix: replace it with `option`")]
    public void A_word_of_a_fit_that_is_not_in_its_list_is_reported(string was, string now, string message, string fix) => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), was, now)
        .Says($"CFG2012 {message}\n{fix}");
}
