using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Tests.Model;

/// <summary>Lengths and currents that are added up in whole small units.</summary>
public class SmallUnitTests
{
    // Hand-worked: 1 in = 25.4 mm = 25400 um; a third digit behind a micrometre is rounded up, so no cable comes out short.
    [Theory]
    [InlineData("1 in", 25_400)]
    [InlineData("2.4 m", 2_400_000)]
    [InlineData("0.0001 mm", 1)]
    [InlineData("1.0001 mm", 1_001)]
    [InlineData("-0.0001 mm", 0)]
    [InlineData("0 mm", 0)]
    public void A_length_is_rounded_up_to_a_whole_micrometre(string written, long micrometres) =>
        Assert.Equal(new Micrometres(micrometres), Micrometres.From(QuantityReader.Read(written).Quantity!));

    [Theory]
    [InlineData("350 mA", 350_000)]
    [InlineData("1.6 A", 1_600_000)]
    [InlineData("0.00001 mA", 1)]
    public void A_current_is_rounded_up_to_a_whole_microampere(string written, long microamperes) =>
        Assert.Equal(new Microamperes(microamperes), Microamperes.From(QuantityReader.Read(written).Quantity!));

    // Rounded by hand: mm with one decimal below a metre, else m with two; half away from zero.
    [Theory]
    [InlineData(0, "0 mm")]
    [InlineData(1, "0 mm")]
    [InlineData(50, "0.1 mm")]
    [InlineData(-50, "-0.1 mm")]
    [InlineData(25_400, "25.4 mm")]
    [InlineData(999_949, "999.9 mm")]
    [InlineData(1_000_000, "1 m")]
    [InlineData(1_005_000, "1.01 m")]
    [InlineData(-2_345_000, "-2.35 m")]
    [InlineData(20_000_000, "20 m")]
    public void A_length_is_printed_in_the_unit_that_suits_it(long micrometres, string printed) =>
        Assert.Equal(printed, new Micrometres(micrometres).ToString());

    // Rounded by hand: mA with one decimal below an ampere, else A with three; half away from zero.
    [Theory]
    [InlineData(0, "0 mA")]
    [InlineData(50, "0.1 mA")]
    [InlineData(350_000, "350 mA")]
    [InlineData(-12_350, "-12.4 mA")]
    [InlineData(1_000_000, "1 A")]
    [InlineData(1_234_500, "1.235 A")]
    [InlineData(8_000_000, "8 A")]
    public void A_current_is_printed_in_the_unit_that_suits_it(long microamperes, string printed) =>
        Assert.Equal(printed, new Microamperes(microamperes).ToString());

    [Fact]
    public void Sums_of_inches_and_metres_stay_exact() =>
        Assert.Equal(new Micrometres(1_025_400), Length("1 in") + Length("1 m"));

    [Fact]
    public void Currents_add_up() => Assert.Equal(
        new Microamperes(1_550_000), Microamperes.Sum([new(1_500_000), new(40_000), new(10_000)]));

    [Fact]
    public void A_computed_value_is_printed_with_its_unit_and_a_count_without()
    {
        Assert.Equal("12.346 m", Measure.Of(new Micrometres(12_345_678)).ToString());
        Assert.Equal("0.5 mA", Measure.Of(new Microamperes(500)).ToString());
        Assert.Equal("4", Measure.Count(4).ToString());
    }

    private static Micrometres Length(string written) => Micrometres.From(QuantityReader.Read(written).Quantity!);
}
