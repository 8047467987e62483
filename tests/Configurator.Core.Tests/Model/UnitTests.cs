using System.Globalization;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Model;

/// <summary>Every unit against published values. Expected values are in the base unit of the dimension.</summary>
public class UnitTests
{
    public static TheoryData<string, string, string> Published { get; } = new()
    {
        // SI prefixes and multiples: BIPM SI brochure, 9th edition, table 7.
        { "1 mm", "1", "base" },
        { "1 cm", "10", "SI" },
        { "1 m", "1000", "SI" },
        { "1 mA", "1", "base" },
        { "1 A", "1000", "SI" },
        { "1 V", "1", "base" },
        { "1 W", "1", "base" },
        { "1 kW", "1000", "SI" },
        { "1 ms", "1", "base" },
        { "1 s", "1000", "SI" },
        { "1 kg", "1", "base" },
        { "1 mohm", "1", "base" },
        { "1 ohm", "1000", "SI" },
        { "1 mm2", "1", "base" },

        // Minute, hour and day: BIPM SI brochure, 9th edition, table 8.
        { "1 min", "60000", "60 s" },
        { "1 h", "3600000", "3600 s" },
        { "1 d", "86400000", "86400 s" },
        { "1 1/min", "1", "base" },
        { "1 m/min", "1", "base" },

        // Bar: BIPM SI brochure, 8th edition, table 8: 1 bar = 100 kPa.
        { "1 bar", "1", "base" },
        { "100 kPa", "1", "1 bar" },

        // International yard and pound agreement, 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg.
        { "36 in", "914.4", "1 yd" },
        { "3 ft", "914.4", "1 yd" },
        { "1 lb", "0.45359237", "definition" },

        // Degree Celsius and Fahrenheit: NIST SP 811 B.8: t/degC = (t/degF - 32)/1.8 = T/K - 273.15.
        { "1 degC", "1", "base" },
        { "32 degF", "0", "ice" },
        { "212 degF", "100", "steam" },
        { "-40 degF", "-40", "where both scales meet" },
        { "273.15 K", "0", "definition" },
        { "0 K", "-273.15", "absolute zero" },

        // Free air at 20 degC and 100 kPa, ISO 8778: the base.
        { "1 l/min", "1", "base" },
        { "40 percent", "40", "base" },
        { "1 N m", "1", "base" },
        { "800 um", "0.8", "SI prefix" },
        { "200 ppm", "0.02", "one millionth in percent" },
        { "3 deg", "3", "base" },
        { "1 EUR", "1", "base" },
        { "1 USD", "1", "base" },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public void A_unit_has_its_published_size(string written, string inBase, string source) =>
        Assert.True(Read(written) == Rational.Parse(inBase), $"{written} is {Read(written)}, not {inBase} ({source})");

    // Source: NIST SP 811 B.8: 1 lbf = 4.4482216152605 N exactly; 1 in = 0.0254 m exactly. 1 bar = 100000 Pa.
    [Fact]
    public void A_psi_is_a_pound_force_on_a_square_inch()
    {
        var pascals = Rational.Parse("4.4482216152605")!.Value / (Rational.Parse("0.0254")!.Value * Rational.Parse("0.0254")!.Value);
        Assert.Equal(pascals / 100_000, Read("1 psi"));
        Assert.Equal("0.068948", Read("1 psi").ToString(decimals: 6));
    }

    // Source: cubic foot 28.316846592 l (0.3048^3); standard atmosphere 101.325 kPa (BIPM); 68 degF is 20 degC, so that the
    // temperature is that of ISO 8778 and only the pressures differ: 28.316846592 x 101.325 / 100.
    [Fact]
    public void A_standard_cubic_foot_is_free_air_at_the_atmosphere_of_iso_8778()
    {
        Assert.Equal(Rational.Parse("28.692044809344"), Rational.Parse(Read("1 scfm").ToString(decimals: 13)));
        Assert.Equal(Read("20 degC"), Read("68 degF"));
    }

    // Source: 14.696 psia, as the trade rounds the standard atmosphere, is 101.3253 kPa: within 4 millionths.
    [Fact]
    public void A_standard_cubic_foot_at_14_696_psia_is_the_same_to_five_digits()
    {
        var atTradePressure = Rational.Parse("28.316846592")!.Value * Read("14.696 psi");
        var ratio = Read("1 scfm") / atTradePressure;
        Assert.True(ratio > Rational.Parse("0.99999")!.Value && ratio < Rational.Parse("1.00001")!.Value, ratio.ToString());
    }

    // Source: tests/Data/awg_areas.csv, ASTM B258 as rounded in trade tables.
    [Fact]
    public void A_wire_size_has_the_area_of_the_trade_tables()
    {
        var rows = CheckData.Rows("awg_areas.csv");
        Assert.Equal(8, rows.Length);
        Assert.All(rows, row => Assert.Equal(Rational.Parse(row["area_mm2"]), Read($"{row["awg"]} AWG")));
    }

    // Source: ASTM B258: the diameter of gauge n is 0.127 mm x 92^((36 - n)/39); the tables round to three digits.
    [Fact]
    public void A_wire_size_follows_its_formula_within_half_a_percent() => Assert.All(CheckData.Rows("awg_areas.csv"), row =>
    {
        var gauge = int.Parse(row["awg"], CultureInfo.InvariantCulture);
        var diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        var area = double.Parse(Read($"{gauge} AWG").ToString(decimals: 6), CultureInfo.InvariantCulture);
        Assert.InRange(area / (Math.PI / 4 * diameter * diameter), 0.995, 1.005);
    });

    [Fact]
    public void Every_unit_is_compared_with_a_published_value()
    {
        var compared = Published.Select(row => row.Data.Item1.Split(' ', 2)[1]).Concat(["psi", "scfm", "AWG"]);
        Assert.Equal(UnitTable.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal), compared.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_unit_names_where_its_size_comes_from() =>
        Assert.All(UnitTable.All, unit => Assert.False(string.IsNullOrWhiteSpace(unit.Source), unit.Symbol));

    [Fact]
    public void The_first_unit_of_a_dimension_is_its_base() => Assert.All(Enum.GetValues<Dimension>(), dimension =>
        Assert.Equal((Rational.Parse("1"), Rational.Parse("0")), ((Rational?)UnitTable.Of(dimension).First().Factor, (Rational?)UnitTable.Of(dimension).First().Offset)));

    private static Rational Read(string written) => QuantityReader.Read(written).Quantity!.InBase;
}
