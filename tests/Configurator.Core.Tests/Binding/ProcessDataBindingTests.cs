using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Every item of process data lies in its place, over no other, and goes together.</summary>
public class ProcessDataBindingTests
{
    private const string Was = "io-link: {rate: com2, input-octets: 2, output-octets: 0, cycle: 2.3 ms}";
    private static readonly string Eye = SmallCatalogue.Device("eye");

    [Fact]
    public void Items_are_kept_in_the_order_in_which_they_travel()
    {
        var eye = With("{name: seen, title: Seen, type: BooleanT, octet: 1}", "{name: contrast, title: Contrast, type: UIntegerT, octet: 0, bit: 2, length: 14}")
            .Catalogue.Devices[new("eye")];
        Assert.Equal(["contrast", "seen"], eye.IoLink!.ProcessData!.Inputs.Select(item => item.Name.Value));
    }

    [Theory]
    [InlineData("{name: [|seen|], title: Seen, type: BooleanT, octet: 2}", "`seen` reaches into octet 2, but the last one is 1")]
    [InlineData("{name: [|far|], title: Far, type: UIntegerT, octet: 1, length: 9}", "`far` reaches into octet 2, but the last one is 1")]
    [InlineData("{name: [|far|], title: Far, type: UIntegerT, octet: 0, bit: 1, length: 16}", "`far` reaches into octet 2, but the last one is 1")]
    public void An_item_lies_within_the_octets_of_its_side(string item, string message) =>
        With(item).Says($"CFG2021 {message}\nnote: the number of octets stands here");

    [Fact]
    public void A_side_without_octets_has_no_items() => Check.Small
        .Changing(Eye, Was, Block("outputs", ["{name: [|go|], title: Go, type: BooleanT, octet: 0}"]))
        .Says("CFG2021 `go` lies in octet 0, but this side has no octets");

    [Fact]
    public void Items_share_no_bit() => With(
            "{name: (|contrast|), title: Contrast, type: UIntegerT, octet: 0, bit: 2, length: 14}",
            "{name: [|seen|], title: Seen, type: BooleanT, octet: 1, bit: 2}")
        .Says(
            "CFG2022 `seen` lies over `contrast`\n"
            + "note: `contrast` takes 14 bits from octet 0 to bit 2 of octet 1\n"
            + "to fix: `seen` takes bits 2 to 2 of octet 1; move one of the two");

    [Fact]
    public void The_bits_below_a_value_are_free_for_signals() => Assert.NotNull(With(
            "{name: contrast, title: Contrast, type: UIntegerT, octet: 0, bit: 2, length: 14}",
            "{name: seen, title: Seen, type: BooleanT, octet: 1, bit: 1}").Catalogue);

    [Fact]
    public void A_name_stands_once_on_both_sides_together() => With(
            "{name: (|seen|), title: Seen, type: BooleanT, octet: 0}",
            "{name: [|seen|], title: Seen, type: BooleanT, octet: 1}")
        .Says("CFG2008 the process data item `seen` is already taken\nnote: it is taken here");

    // Source: from memory, IEC 61131-3: an identifier is made of letters, digits and single underscores.
    [Theory]
    [InlineData("lens--dirty")]
    [InlineData("lens_dirty")]
    [InlineData("LensDirty")]
    [InlineData("2-lanes")]
    [InlineData("größe")]
    public void A_name_is_made_of_letters_and_digits(string name) =>
        With($"{{name: [|{name}|], title: Seen, type: BooleanT, octet: 0}}")
            .Says($"CFG2007 `{name}` is not made of lower-case words and digits joined by hyphens");

    // A bare number as a word would let two tags be one.
    [Theory]
    [InlineData("lane-2", "lane2")]
    [InlineData("lane-2-dirty", "lane2-dirty")]
    [InlineData("lane-2b", "lane2b")]
    public void A_word_of_a_name_starts_with_a_letter(string name, string mended) =>
        With($"{{name: [|{name}|], title: Seen, type: BooleanT, octet: 0}}")
            .Says($"CFG2023 a word of `{name}` starts with a digit\nto fix: replace it with `{mended}`");

    [Theory]
    [InlineData("{name: [|far|], title: Far, type: UIntegerT, octet: 0}", "CFG2005 `length` is missing: an integer states its bits")]
    [InlineData("{name: far, title: Far, type: IntegerT, octet: 0, length: [|1|]}", "CFG2023 `IntegerT` has no length of 1 bits\nto fix: write 2 to 64")]
    [InlineData("{name: far, title: Far, type: BooleanT, octet: 0, length: [|8|]}", "CFG2023 `BooleanT` has no length of 8 bits\nto fix: leave it out; it is 1")]
    [InlineData("{name: far, title: Far, type: UIntegerT, octet: 0, length: [|65|]}", "CFG2013 `65` is not a whole number from 1 to 64")]
    [InlineData("{name: far, title: Far, type: [|uint|], octet: 0, length: 8}", "CFG2012 `uint` is not one of `BooleanT`, `Float32T`, `IntegerT`, `UIntegerT`")]
    [InlineData("{name: far, title: Far, type: UIntegerT, octet: 0, length: 8, from: 0 mm, to: [|20 percent|]}", "CFG2023 `20 percent` does not go with `far`\nto fix: write a value in `mm`")]
    [InlineData("{name: far, title: Far, type: UIntegerT, octet: 0, length: 8, step: [|small|]}", "CFG2023 `small` does not go with `far`\nto fix: write a bare number or a quantity such as `40 percent`")]
    [InlineData("{name: far, title: Far, type: BooleanT, octet: 0, port: [|1|]}", "CFG2003 there is no port 1 on `this device`")]
    public void What_is_said_of_an_item_goes_together(string item, string message) => With(item).Says(message);

    // Source: hand calculation. 100 / 0.1 = 1000 > 2^8 - 1 = 255; -20 / 0.5 = -40 < 0; -70 / 0.5 = -140 < -2^7 = -128.
    [Theory]
    [InlineData("type: UIntegerT, octet: 0, length: 8, from: 0 mm, to: 100 mm, step: 0.1 mm", "the raw value 1000 of `far` does not fit into UIntegerT of 8 bits, which holds 0 to 255")]
    [InlineData("type: UIntegerT, octet: 0, length: 8, from: -20 mm, to: 100 mm, step: 0.5 mm", "the raw value -40 of `far` does not fit into UIntegerT of 8 bits, which holds 0 to 255")]
    [InlineData("type: IntegerT, octet: 0, length: 8, from: -70 mm, to: 60 mm, step: 0.5 mm", "the raw value -140 of `far` does not fit into IntegerT of 8 bits, which holds -128 to 127")]
    public void The_raw_values_of_both_limits_fit_into_the_bits(string rest, string message) =>
        With($"{{name: [|far|], title: Far, {rest}}}").Says("CFG2023 " + message);

    [Fact]
    public void A_value_that_just_fits_is_taken() => Assert.NotNull(With(
            "{name: far, title: Far, type: IntegerT, octet: 0, length: 8, from: -64 mm, to: 63.5 mm, step: 0.5 mm}").Catalogue);

    [Fact]
    public void The_signal_at_pin_2_has_its_name_already() => Check.Small
        .Changing(Eye, Was, Block("inputs", ["{name: [|pin2|], title: Seen, type: BooleanT, octet: 0}"]) + "\npin-2: signal")
        .Says("CFG2023 `pin2` is the name of the signal at pin 2 of this device");

    [Fact]
    public void Two_devices_of_one_identity_could_not_be_told_apart() => Check.Small
        .Changing(Eye, "cycle: 2.3 ms}", "cycle: 2.3 ms, identity: {vendor: 65535, device: (|7|)}}")
        .Changing(SmallCatalogue.Device("hub-4"), "cycle: 3 ms}", "cycle: 3 ms, identity: {vendor: 65535, device: [|7|]}}")
        .Says("CFG2008 the identity `vendor 65535, device 7` is already taken\nnote: it is taken here");

    // Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) B.1: VendorID has two octets, DeviceID three.
    [Theory]
    [InlineData("{vendor: [|65536|], device: 7}", "`65536` is not a whole number from 1 to 65535")]
    [InlineData("{vendor: 65535, device: [|16777216|]}", "`16777216` is not a whole number from 1 to 16777215")]
    public void An_identity_has_its_range(string identity, string message) => Check.Small
        .Changing(Eye, "cycle: 2.3 ms}", $"cycle: 2.3 ms, identity: {identity}}}")
        .Says("CFG2013 " + message);

    [Theory]
    [InlineData("{name: in1, title: One, type: BooleanT, octet: 0, port: [|5|]}", "CFG2003 there is no port 5 on `this device`\nto fix: use one of its ports 1, 2, 3, 4")]
    [InlineData("{name: in1, title: One, type: UIntegerT, octet: 0, length: 2, port: [|1|]}", "CFG2006 `port` and `type: UIntegerT` stand together; only one of them may")]
    public void An_item_of_a_hub_carries_the_signal_of_a_port_that_is_there(string item, string message) => Check.Small
        .Changing(SmallCatalogue.Device("hub-4"), "cycle: 3 ms}", $"cycle: 3 ms, process-data: {{inputs: [{item}]}}}}")
        .Says(message);

    private static Check With(params string[] inputs) => Check.Small.Changing(Eye, Was, Block("inputs", inputs));

    private static string Block(string side, string[] items) =>
        "io-link:\n  rate: com2\n  input-octets: 2\n  output-octets: 0\n  cycle: 2.3 ms\n  process-data:\n    "
        + $"{side}:\n{string.Join('\n', items.Select(item => $"      - {item}"))}";
}
