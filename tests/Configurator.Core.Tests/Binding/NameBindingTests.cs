using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Names of things that are not there, each reported where it is named with the nearest one that is.</summary>
public class NameBindingTests
{
    [Fact]
    public void An_unknown_station_of_a_fit() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "stations: [outfeed]", "stations: [[|outfed|]]")
        .Says("CFG2003 there is no station `outfed`\nto fix: replace it with `outfeed`");

    [Fact]
    public void An_unknown_station_of_the_box() => Check.Small
        .Machine("box: {station: cabinet", "box: {station: [|cabnet|]")
        .Says("CFG2003 there is no station `cabnet`\nto fix: replace it with `cabinet`");

    [Fact]
    public void An_unknown_station_of_a_master() => Check.Small
        .Machine("station: outfeed, extension", "station: [|outfeeed|], extension")
        .Says("CFG2003 there is no station `outfeeed`\nto fix: replace it with `outfeed`");

    [Fact]
    public void An_unknown_node_of_a_station() => Check.Small
        .Machine("node: middle, drop", "node: [|midle|], drop")
        .Says("CFG2003 there is no node `midle`\nto fix: replace it with `middle`");

    [Fact]
    public void An_unknown_node_of_an_edge() => Check.Small
        .Machine("{from: middle, to: far-end}", "{from: middle, to: [|far-and|]}")
        .Says("CFG2003 there is no node `far-and`\nto fix: replace it with `far-end`");

    [Fact]
    public void An_unknown_area_of_a_station() => Check.Small
        .Machine("title: Outfeed, area: wet", "title: Outfeed, area: [|dry|]")
        .Says("CFG2003 there is no area `dry`\nto fix: define it, or name another area");

    [Fact]
    public void An_unknown_device_of_a_fit() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "device: small-drive", "device: [|smal-drive|]")
        .Says("CFG2003 there is no device `smal-drive`\nto fix: replace it with `small-drive`");

    [Fact]
    public void An_unknown_device_of_a_standard_fit() => Check.Small
        .Machine("device: guard-switch", "device: [|gard-switch|]")
        .Says("CFG2003 there is no device `gard-switch`\nto fix: replace it with `guard-switch`");

    [Theory]
    [InlineData("device: master-4, station: filler", "device: [|master-5|], station: filler", "master-5", "master-4")]
    [InlineData("io-link: cord-4", "io-link: [|cord-6|]", "cord-6", "cord-4")]
    [InlineData("network: trunk-network", "network: [|trunk-net|]", "trunk-net", "trunk-network")]
    public void An_unknown_device_of_the_architecture(string was, string now, string unknown, string nearest) => Check.Small
        .Machine(was, now)
        .Says($"CFG2003 there is no device `{unknown}`\nto fix: replace it with `{nearest}`");

    [Fact]
    public void An_unknown_alternate_of_a_device() => Check.Small
        .Changing(SmallCatalogue.Device("prox"), "current: 20 mA", "current: 20 mA\nalternates: [eye, [|eyes|]]")
        .Says("CFG2003 there is no device `eyes`\nto fix: replace it with `eye`");

    [Theory]
    [InlineData("requires: [[|flim|]]")]
    [InlineData("not-with: [[|flim|]]")]
    [InlineData("comes-with: [ {option: [|flim|], because: x}]")]
    [InlineData("requires: [{any: [precut, [|flim|]]}]")]
    [InlineData("requires: [{option: [|flim|], at-least: 2}]")]
    public void An_unknown_option_of_an_option(string line) => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "offered-on: [cup-one]", "offered-on: [cup-one]\n" + line)
        .Says("CFG2003 there is no option `flim`\nto fix: replace it with `film`");

    [Fact]
    public void An_unknown_option_in_the_condition_of_a_fit() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "wiring: inside", "wiring: inside, when: [|hed|]")
        .Says("CFG2003 there is no option `hed`\nto fix: define it, or name another option");

    [Theory]
    [InlineData("of: [film, precut]", "of: [film, [|pre-cut|]]", "pre-cut")]
    [InlineData("when: counter", "when: [|pre-cut|]", "pre-cut")]
    [InlineData("need: cup-check", "never: {all: [cup-check, [|pre-cut|]]}", "pre-cut")]
    public void An_unknown_option_of_a_rule(string was, string now, string unknown) => Check.Small
        .Machine(was, now)
        .Says($"CFG2003 there is no option `{unknown}`\nto fix: replace it with `precut`");

    [Fact]
    public void An_unknown_machine_of_an_option() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "[cup-one]", "[cup-one, [|cup-on|]]")
        .Says("CFG2003 there is no machine `cup-on`\nto fix: replace it with `cup-one`");

    [Fact]
    public void An_unknown_machine_in_the_differences_of_a_fit() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "wiring: inside}", "wiring: inside, on: {[|cup-on|]: {device: small-drive}}}")
        .Says("CFG2003 there is no machine `cup-on`\nto fix: replace it with `cup-one`");

    [Fact]
    public void An_unknown_parameter_in_the_settings_of_a_fit() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "settings: [threshold]", "settings: [threshold, [|treshold|]]")
        .Says("CFG2003 there is no parameter of `eye` `treshold`\nto fix: replace it with `threshold`");

    [Fact]
    public void An_unknown_parameter_that_a_fit_sets() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "set: {output: light}", "set: {[|outputs|]: light}")
        .Says("CFG2003 there is no parameter of `eye` `outputs`\nto fix: replace it with `output`");

    [Fact]
    public void An_option_that_is_not_offered_here_is_no_unknown_one() => Check.Small
        .With("option: foam\ntitle: Foam\nsummary: Foam\noffered-on: []\n")
        .Machine("when: counter", "when: [|foam|]")
        .Says("CFG2014 option `foam` is not offered on `cup-one`\nto fix: add `cup-one` to its `offered-on`, or leave it out here");

    [Fact]
    public void A_definition_of_no_kind_is_reported_at_its_first_key() => Check.Small
        .At(SmallCatalogue.Option("rinse"), "[|optoin|]: rinse\ntitle: Rinse\nsummary: Rinses\noffered-on: [cup-one]\n")
        .Says("CFG2001 a definition cannot start with `optoin`\nto fix: replace it with `option`");

    [Fact]
    public void A_definition_in_the_wrong_folder_is_reported() => Check.Small
        .At("options/rinse.yaml", "[|option|]: rinse\n")
        .Says("CFG2002 a definition of kind `option` does not belong here\nto fix: move the file to `options/{family}/*.yaml`");

    [Fact]
    public void An_option_among_the_devices_is_reported() => Check.Small
        .At("options/devices/rinse.yaml", "[|option|]: rinse\n")
        .Says("CFG2002 a definition of kind `option` does not belong here");
}
