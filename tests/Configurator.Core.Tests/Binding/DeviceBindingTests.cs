using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>What a device must say because of what it is; nothing that mounts it is reported as well.</summary>
public class DeviceBindingTests
{
    [Theory]
    [InlineData("eye", "io-link: {rate: com2, input-octets: 2, output-octets: 0, cycle: 2.3 ms}\n", "io-link", "an IO-Link device states its process data and cycle")]
    [InlineData("prox", "current: 20 mA\n", "current", "what it draws from its port is added up")]
    [InlineData("valves", "extra-current: 800 mA\n", "extra-current", "what it draws from the extra supply is added up")]
    [InlineData("hub-4", "ports: {switching: [1, 2, 3, 4], current-per-port: 100 mA, current-in-all: 300 mA}\n", "ports", "a master or hub states its ports")]
    [InlineData("trunk-power", "cordset: {lengths: [5 m, 10 m], cores: [BN, WH, BU, BK], conductor: 0.34 mm2, jacket: TPE}\n", "cordset", "a cordset states its lengths and cores")]
    public void A_device_says_what_its_kind_demands(string device, string line, string key, string why) => Check.Small
        .Changing(SmallCatalogue.Device(device), line, "")
        .Changing(SmallCatalogue.Device(device), $"device: {device}", $"device: [|{device}|]")
        .Says($"CFG2005 `{key}` is missing: {why}\nto fix: add `{key}:`");

    [Fact]
    public void A_misspelt_demand_is_reported_once() => Check.Small
        .Changing(SmallCatalogue.Device("prox"), "current: 20 mA", "[|curent|]: 20 mA")
        .Says("CFG2004 a device has no key `curent`\nto fix: replace it with `current`");

    [Fact]
    public void A_port_number_taken_twice_is_reported_at_the_second() => Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "class-a: [1, 2]", "class-a: [1, (|2|)]")
        .Changing(SmallCatalogue.Device("master-4"), "class-b: [3, 4]", "class-b: [[|2|], 3, 4]")
        .Says("CFG2008 the port number `2` is already taken\nnote: it is taken here");

    [Theory]
    [InlineData("eye", "plug: m12-a-4", "plug: [|m12|]", "`m12` is not a plug such as `m12-a-4`, `terminals` or `none`")]
    [InlineData("eye", "letters: BX", "letters: [|bx|]", "`bx` is not class letters of IEC 81346-2 such as `BX`")]
    [InlineData("cord-4", "cores: [BN, WH,", "cores: [[|brown|], WH,", "`brown` is not a colour code of IEC 60757 such as `BN`")]
    [InlineData("prox", "current: 20 mA", "current: 20 mA\ningress: [IP67, IP69K, [|IP 67|]]", "`IP 67` is not an ingress marking such as `IP67`")]
    public void A_marking_that_has_not_its_form_is_reported(string device, string was, string now, string message) => Check.Small
        .Changing(SmallCatalogue.Device(device), was, now)
        .Says("CFG2006 " + message);

    [Fact]
    public void A_port_class_is_a_capital_letter() => Check.Small
        .Changing(SmallCatalogue.Device("valves"), "port-class: B", "port-class: [|b|]")
        .Says("CFG2012 `b` is not one of `A`, `B`, `switching`\nto fix: replace it with `A`");

    [Fact]
    public void A_cable_that_is_no_cordset_is_reported_where_the_machine_names_it() => Check.Small
        .Machine("direct: cord-open", "direct: [|prox|]")
        .Says("CFG2016 device `prox` cannot be a stock cable: it has no `cordset`\nto fix: name another device, or complete its definition");

    [Fact]
    public void A_master_that_is_none_is_reported_where_the_machine_names_it() => Check.Small
        .Machine("master: front, device: master-4", "master: front, device: [|hub-4|]")
        .Says("CFG2016 device `hub-4` cannot be a master: it is not of kind `io-link-master` with `ports`");

    [Fact]
    public void A_fault_in_a_device_that_is_mounted_and_planned_is_reported_once() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: [|40|]")
        .Says("CFG2010 `40` has no unit");

    [Fact]
    public void A_fault_in_the_hub_that_others_are_plugged_into_is_reported_once() => Check.Small
        .Changing(SmallCatalogue.Device("hub-4"), "current: 30 mA", "current: [|30|]")
        .Says("CFG2010 `30` has no unit");

    [Fact]
    public void A_fault_in_the_master_of_all_homes_is_reported_once() => Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "pin-2: either", "pin-2: [|both|]")
        .Says("CFG2012 `both` is not one of `either`, `input`, `none`, `output`");

    [Fact]
    public void A_fault_in_the_text_of_a_device_is_reported_once() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "title: Contrast sensor", "title: {[|english|]: Contrast sensor}")
        .Says("CFG2017 `english` is not a language code");

    [Fact]
    public void Stock_lengths_are_kept_shortest_first()
    {
        var catalogue = Check.Small.Changing(SmallCatalogue.Device("cord-4"), "2 m, 5 m, 10 m, 20 m", "10 m, 2 m, 200 mm, 20 m").Catalogue;
        Assert.Equal(["200 mm", "2 m", "10 m", "20 m"], catalogue.Devices[new("cord-4")].Cordset!.Lengths.Select(length => length.Written));
    }
}
