using Configurator.Core.Engineering.Box;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Tests.Engineering.Box;

public class HeatTests
{
    // Source: tests/Data/reference/enclosure_area_formulas.csv, VDE 0660-500 / IEC 60890 area rule.
    [Theory]
    [InlineData(Mounting.SingleFree, "1.434")]
    [InlineData(Mounting.SingleOnWall, "1.242")]
    [InlineData(Mounting.EndOfRowFree, "1.354")]
    [InlineData(Mounting.EndOfRowOnWall, "1.162")]
    [InlineData(Mounting.MiddleOfRowFree, "1.274")]
    [InlineData(Mounting.MiddleOfRowOnWall, "1.082")]
    [InlineData(Mounting.MiddleOfRowOnWallTopCovered, "0.977")]
    public void A_cabinet_gives_off_heat_by_its_free_faces(Mounting mounting, string area) =>
        Assert.Equal(Rational.Parse(area), new EnclosureSize(new(4, 5), new(3, 5), new(1, 4)).EffectiveArea(mounting));

    // Source: tests/Data/reference/worked_examples.csv, WE-23 and WE-25.
    [Fact]
    public void Losses_warm_the_inside()
    {
        Assert.Equal("8.783", Heat.Rise(60, Rational.Of(5.5m), Rational.Of(1.242m)).ToString(decimals: 3));
        Assert.Equal("6.061", Heat.AreaFor(500, Rational.Of(5.5m), 15).ToString(decimals: 3));
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-43; from memory.
    [Fact]
    public void A_fan_carries_away_what_the_walls_do_not() =>
        Assert.Equal("102.82", Heat.FanFlow(400, Rational.Of(5.5m), Rational.Of(1.242m), 10).ToString(decimals: 2));

    // By hand: 240 W at 92 % lose 20.87 W; what cooling takes and a heater gives are one sum with two signs.
    [Fact]
    public void Supplies_and_heaters_follow_from_the_balance()
    {
        Assert.Equal("20.87", Heat.SupplyLossWatts(240, Rational.Of(0.92m)).ToString(decimals: 2));
        Assert.Equal(Heat.CoolingWatts(400, 5, 1, 10), -Heat.HeaterWatts(400, 5, 1, 10));
    }
}
