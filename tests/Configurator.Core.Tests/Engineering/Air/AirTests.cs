using System.Globalization;
using Configurator.Core.Engineering.Air;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Air;

public class AirTests
{
    public static TheoryData<string, string> Leaks { get; } = new(
        CheckData.Rows("reference/air_leak_table.csv").Select(row => (row["orifice_mm"], row["flow_scfm_choked_formula"])));

    // Source: a public leak table attributed to US DOE, by tests/Data/reference/air_leak_table.csv; 100 psig, 68 degF.
    [Theory]
    [MemberData(nameof(Leaks))]
    public void A_hole_leaks_by_its_area(string millimetres, string scfm)
    {
        var cubicMetres = Flow.Leak(Number(millimetres) / 1000, 1, (100 + 14.696) * 6894.757, 293.15, 101_325);
        Assert.InRange(cubicMetres / 0.0283168466 * 60 / Number(scfm), 0.998, 1.002);
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-30 and WE-32; subsonic by hand: 14 x sqrt(1 - ((5/7 - 0.3) / 0.7)^2).
    [Theory]
    [InlineData(1, 293.15, 14.0)]
    [InlineData(1, 313.15, 13.5456)]
    [InlineData(5, 293.15, 11.2848)]
    [InlineData(7, 293.15, 0)]
    public void A_valve_passes_what_its_conductance_allows(double downstream, double kelvin, double flow) =>
        Assert.Equal(flow, Flow.Iso6358(2, 0.3, 7, downstream, kelvin), 4);

    // Source: US DOE/ORNL calculator tests, worked_examples.csv WE-26 and WE-27.
    [Theory]
    [InlineData(false, "0.36797")]
    [InlineData(true, "0.71294")]
    public void A_cylinder_fills_once_or_twice_a_cycle(bool isDouble, string cubicFeet) => Assert.Equal(
        cubicFeet,
        (new Cylinder(new(3, 2), new(3, 8), 6).IntakePerMinute(60, isDouble, Rational.Of(0.785m)) / 1728).ToString(decimals: 5));

    // Source: US DOE tip sheets, worked_examples.csv WE-34 and WE-36 (the latter from memory).
    [Fact]
    public void Air_costs_electricity()
    {
        Assert.Equal("48792", AirCost.Compressor(215, 6800, new(1, 20), new(17, 20), 1, new(19, 20)).ToString(decimals: 0));
        Assert.Equal("5765", AirCost.Leaks(100, new(3, 2), new(61, 100), new(9, 50), 7000, new(1, 20)).ToString(decimals: 0));
    }

    // By hand: pi/4 x 40^2 mm2 x 6 bar x 0.9 = 678.6 N; 50 dm3 by 2 bar at 16 dm3/s.
    [Fact]
    public void Force_and_charging_time_follow()
    {
        Assert.Equal("678.6", new Cylinder(40, 0, 0).PushNewtons(6, 0, new(9, 10)).ToString(decimals: 1));
        Assert.Equal(6.25, Flow.ChargeSeconds(50, 2, 2, 8), 9);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
