using System.Collections.Immutable;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;
using CsCheck;

namespace Configurator.Core.Tests.Engineering.Power;

public class ConductorTests
{
    private static readonly Gen<Rational> Small = Gen.Int[1, 5000].Select(value => new Rational(value, 100));

    public static TheoryData<string, string, string, string> Sizes { get; } =
        new(CheckData.Rows("reference/conductor_resistance.csv").Select(row =>
            (row["area_mm2"], row["iec_60228_class"], row["r20_plain_ohm_km"], row["r20_tinned_ohm_km"])));

    // Source: IEC 60228 by tests/Data/reference/conductor_resistance.csv; sizes below 0.5 mm2 are common practice.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_standard_size_has_its_resistance(string area, string kind, string plain, string tinned)
    {
        var size = ConductorSizes.Find(Rational.Parse(area)!.Value, kind == "5" ? 5 : 1)!;
        Assert.Equal((Rational.Parse(plain), Rational.Parse(tinned)), (size.PlainOhmPerKm, size.TinnedOhmPerKm));
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-20: a public cable-maker table of IEC 60228 factors.
    [Theory]
    [InlineData(5, "1.064")]
    [InlineData(10, "1.042")]
    [InlineData(30, "0.962")]
    [InlineData(40, "0.926")]
    [InlineData(50, "0.893")]
    [InlineData(80, "0.806")]
    public void A_resistance_is_brought_to_twenty_degrees(int celsius, string factor) =>
        Assert.Equal(factor, Conductors.CorrectionToTwenty(celsius).ToString(decimals: 3));

    // By hand: 7.98 x (1 + 0.00393 x 50).
    [Fact]
    public void A_hot_conductor_resists_more() =>
        Assert.Equal("9.54807", Conductors.AtTemperature(Rational.Of(7.98m), 70).ToString());

    // Source: IEC 60204-1 table 6, electronic pairs on an open tray (from memory); a size between two rows takes the lower.
    [Theory]
    [InlineData("0.14", "0")]
    [InlineData("0.2", "4.4")]
    [InlineData("0.34", "4.4")]
    [InlineData("0.5", "7.8")]
    [InlineData("0.75", "10")]
    public void The_core_of_a_cordset_carries_what_the_table_says(string area, string amperes) =>
        Assert.Equal(amperes, Ampacity.OfCordset(Rational.Parse(area)!.Value).ToString());

    // Source: tests/Data/reference/worked_examples.csv, WE-13.
    [Fact]
    public void A_cable_loses_its_current_times_both_ways() =>
        Assert.Equal(Rational.Of(0.456m), Conductors.DropVolts(20, 57, new(1, 5)));

    // Source: tests/Data/reference/worked_examples.csv, WE-17.
    [Fact]
    public void A_trunk_loses_on_each_stretch_what_still_flows() => Assert.Equal(
        [Rational.Of(23.0424m), Rational.Of(22.404m), Rational.Of(22.0848m)],
        Trunk.VoltsAtTaps(24, [.. Enumerable.Repeat(new TrunkStretch(10, Rational.Of(7.98m), 2), 3)]));

    // Source: tests/Data/reference/worked_examples.csv, WE-19.
    [Fact]
    public void A_load_of_constant_power_settles()
    {
        var point = ConstantPowerLoad.Settle(24, new(1, 2), 48)!.Value;
        Assert.Equal(("22.9545", "2.0911"), (point.Volts.ToString(decimals: 4), point.Amperes.ToString(decimals: 4)));
    }

    // By hand: 24^2 / (4 x 3 ohm) = 48 W is the most.
    [Theory]
    [InlineData(48, true)]
    [InlineData(49, false)]
    public void A_line_carries_so_much_power_and_no_more(int watts, bool settles)
    {
        Assert.Equal(48, ConstantPowerLoad.WattsMax(24, 3));
        Assert.Equal(settles, ConstantPowerLoad.Settle(24, 3, watts) is not null);
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-21.
    [Fact]
    public void A_short_circuit_at_the_end_of_a_thin_line_is_small() =>
        Assert.Equal("11.268", Conductors.ShortCircuitAmperes(24, new(1, 20), 40, 26).ToString(decimals: 3));

    // By hand: 2 x 30 x 4 x 17.241 / 1200 = 3.4482 mm2, so 4 mm2.
    [Fact]
    public void The_next_standard_size_holds_the_smallest_area()
    {
        var area = Conductors.AreaMin(30, 4, Rational.Of(1.2m), 20);
        Assert.Equal("3.4482", area.ToString());
        Assert.Equal(4, ConductorSizes.AtLeast(area)!.AreaMm2);
        Assert.Equal(6, ConductorSizes.After(4)!.AreaMm2);
        Assert.Null(ConductorSizes.AtLeast(1000));
    }

    // Source: tests/Data/reference/conductor_ampacity.csv, IEC 60204-1 table 6; factors from memory.
    [Theory]
    [InlineData("0.75", Installation.B2, "8.5")]
    [InlineData("1", Installation.E, "12.4")]
    [InlineData("1.5", Installation.B1, "13.5")]
    [InlineData("2.5", Installation.C, "21")]
    [InlineData("4", Installation.B2, "23")]
    [InlineData("6", Installation.E, "37")]
    [InlineData("10", Installation.B2, "40")]
    [InlineData("16", Installation.E, "70")]
    public void A_conductor_carries_what_the_table_says(string area, Installation installation, string amperes) =>
        Assert.Equal(Rational.Parse(amperes), Ampacity.Amperes(Rational.Parse(area)!.Value, installation));

    // Source: tests/Data/reference/ampacity_temperature_factor.csv, IEC 60204-1 table D.1, from memory; in between the warmer row holds.
    [Theory]
    [InlineData("30", "1.15")]
    [InlineData("40", "1")]
    [InlineData("42", "0.91")]
    [InlineData("60", "0.58")]
    [InlineData("61", null)]
    public void Heat_takes_away(string ambient, string? factor) =>
        Assert.Equal(factor is null ? null : Rational.Parse(factor), Ampacity.TemperatureFactor(Rational.Parse(ambient)!.Value));

    // Source: tests/Data/reference/ampacity_grouping_factor.csv, IEC 60204-1 table D.2, from memory.
    [Theory]
    [InlineData(1, Installation.B2, "1")]
    [InlineData(2, Installation.B1, "0.8")]
    [InlineData(3, Installation.C, "0.75")]
    [InlineData(6, Installation.E, "0.73")]
    [InlineData(9, Installation.B2, "0.5")]
    public void Company_takes_away(int cables, Installation installation, string factor) =>
        Assert.Equal(Rational.Parse(factor), Ampacity.GroupFactor(cables, installation));

    // Laws of a line.
    [Fact]
    public void A_longer_line_never_raises_the_far_voltage_nor_the_short_circuit() =>
        Gen.Select(Small, Small, Small, Small).Sample((length, ohm, current, more) =>
            Conductors.DropVolts(length + more, ohm, current) > Conductors.DropVolts(length, ohm, current)
            && Conductors.ShortCircuitAmperes(24, 0, length + more, ohm) < Conductors.ShortCircuitAmperes(24, 0, length, ohm)
            && Conductors.DropVolts(Conductors.LengthMetresMax(1, ohm, current), ohm, current) == 1);

    // Law: a stretch made longer lowers every tap from its own on and raises none.
    [Fact]
    public void A_longer_stretch_never_raises_any_tap() => Gen.Select(Gen.Select(Small, Small).List[1, 6], Small, Gen.Int[0, 5]).Sample((parts, more, at) =>
    {
        ImmutableArray<TrunkStretch> trunk = [.. parts.Select(part => new TrunkStretch(part.Item1, 8, part.Item2))];
        var which = at % trunk.Length;
        var before = Trunk.VoltsAtTaps(24, trunk);
        var after = Trunk.VoltsAtTaps(24, trunk.SetItem(which, trunk[which] with { LengthMetres = trunk[which].LengthMetres + more }));
        return before.Zip(after).Select((pair, tap) => tap < which ? pair.First == pair.Second : pair.Second < pair.First).All(holds => holds);
    });

    // Law: what settles satisfies its own equation from the safe side, and a longer line never raises it.
    [Fact]
    public void A_load_of_constant_power_settles_on_the_safe_side() => Gen.Select(Small, Small, Small).Sample((ohm, watts, more) =>
    {
        var point = ConstantPowerLoad.Settle(24, ohm, watts);
        return point is not { } settled
            || ((settled.Volts * settled.Volts) - (24 * settled.Volts) + (ohm * watts) <= 0
                && 24 - (ohm * settled.Amperes) <= settled.Volts + Rational.Of(0.000001m)
                && (ConstantPowerLoad.Settle(24, ohm + more, watts) is not { } longer || longer.Volts <= settled.Volts));
    });
}
