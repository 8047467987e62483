using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class QuantityBindingTests
{
    [Fact]
    public void A_number_without_its_unit_is_answered_with_the_units_there_are() => Check.Small
        .Machine("slack: 200 mm", "slack: [|200|]")
        .Says(
            """
            CFG2010 `200` has no unit
            to fix: write the unit after the number, such as `600 mm`; units here are `mm`, `cm`, `m`, `in`, `ft`, `um`
            """);

    [Theory]
    [InlineData("200mm", "200 mm")]
    [InlineData("200  mm", "200 mm")]
    public void A_unit_stands_behind_one_space(string written, string mended) => Check.Small
        .Machine("slack: 200 mm", $"slack: [|{written}|]")
        .Says($"CFG2010 `{written}` needs one space before its unit\nto fix: replace it with `{mended}`");

    [Theory]
    [InlineData("mm")]
    [InlineData(".2 m")]
    [InlineData("about 2 m")]
    public void What_starts_with_no_number_is_reported(string written) => Check.Small
        .Machine("slack: 200 mm", $"slack: [|{written}|]")
        .Says($"CFG2010 `{written}` does not start with a number\nto fix: write it with digits and a decimal point, such as `600 mm`");

    [Fact]
    public void A_unit_in_the_wrong_case_is_replaced() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: [|40 MA|]")
        .Says("CFG2011 there is no unit `MA`\nto fix: replace it with `40 mA`");

    [Fact]
    public void An_unknown_unit_is_answered_with_the_units_there_are() => Check.Small
        .Changing(SmallCatalogue.Device("valves"), "air: 18 l/min", "air: [|18 lpm|]")
        .Says("CFG2011 there is no unit `lpm`\nto fix: use one of `l/min`, `scfm`");

    [Fact]
    public void A_decimal_comma_is_no_point() => Check.Small
        .Machine("slack: 200 mm", "slack: [|\"0,2 m\"|]")
        .Says("CFG2011 there is no unit `,2 m`\nto fix: use one of `mm`, `cm`, `m`, `in`, `ft`, `um`");

    [Theory]
    [InlineData("current: 40 mA", "current: [|40 V|]", "`V` is not a unit of current", "`mA`, `A`")]
    [InlineData("cycle: 2.3 ms", "cycle: [|2.3 1/min|]", "`1/min` is not a unit of time", "`ms`, `s`, `min`, `h`, `d`")]
    public void A_unit_of_something_else_is_reported(string was, string now, string message, string units) => Check.Small
        .Changing(SmallCatalogue.Device("eye"), was, now)
        .Says($"CFG2011 {message}\nto fix: use one of {units}");

    [Fact]
    public void A_speed_is_no_rate() => Check.Small
        .Machine("document: C1", "document: C1\nrate: [|30 m/min|]")
        .Says("CFG2011 `m/min` is not a unit of rate\nto fix: use one of `1/min`");

    [Fact]
    public void A_length_below_zero_is_reported() => Check.Small
        .Machine("drop: 700 mm", "drop: [|-700 mm|]")
        .Says("CFG2013 `-700 mm` is below zero\nto fix: write a value of zero or more");

    [Fact]
    public void A_coordinate_may_be_below_zero() => Check.Small.Machine("y: 4 m", "y: -4 m").Says();

    [Fact]
    public void A_wire_size_that_is_not_made_is_reported() => Check.Small
        .Changing(SmallCatalogue.Device("cord-4"), "conductor: 0.34 mm2", "conductor: [|15 AWG|]")
        .Says("CFG2011 there is no size `15 AWG` in the table of wire sizes\nto fix: use an even AWG size from 10 to 24, or give it in mm2");

    [Theory]
    [InlineData("99999999999999999999 m")]
    [InlineData("100000001 m")]
    public void A_length_that_nobody_builds_is_reported(string written) => Check.Small
        .Machine("slack: 200 mm", $"slack: [|{written}|]")
        .Says($"CFG2013 `{written}` is beyond anything that is built\nto fix: check the number and its unit");

    [Fact]
    public void A_number_of_many_digits_is_reported_in_few_words() => Check.Small
        .Machine("slack: 200 mm", $"slack: [|{new string('9', 10_000)} mm|]")
        .Says($"CFG2013 `{new string('9', 40)}...` is beyond anything that is built");

    [Fact]
    public void Metric_and_us_customary_units_may_stand_side_by_side() => Check.Small
        .Machine("drop: 500 mm", "drop: 20 in")
        .Machine("x: 6 m", "x: 19.68503937 ft")
        .Changing(SmallCatalogue.Device("valves"), "air: 18 l/min", "air: 0.6 scfm")
        .Changing(SmallCatalogue.Device("cord-4"), "conductor: 0.34 mm2", "conductor: 22 AWG")
        .Says();
}
