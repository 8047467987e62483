using Configurator.Core.Engineering.Ports;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Cable lengths worked by hand: way along the route + drop at both ends + 0.2 m slack, then the next stock length.</summary>
public class CableTests
{
    private const string Everything = "film cup-check counter agitator";

    // Box to filler: 3 + 0.5 + 0.8 + 0.2 = 4.5 m. Filler to outfeed: 5 + 0.8 + 0.7 + 0.2 = 6.7 m. On the spot at the filler:
    // 0.8 + 0.8 + 0.2 = 1.8 m; at the outfeed: 0.7 + 0.7 + 0.2 = 1.6 m.
    [Theory]
    [InlineData("trunk-power-front", "Pass: 4.5 m of 10 m, margin 5.5 m")]
    [InlineData("trunk-network-front", "Pass: 4.5 m of 10 m, margin 5.5 m")]
    [InlineData("trunk-power-extra", "Pass: 6.7 m of 10 m, margin 3.3 m")]
    [InlineData("cup-check/cup-eye/1", "Pass: 6.7 m of 20 m, margin 13.3 m")]
    [InlineData("counter/count-hub/1", "Pass: 6.7 m of 20 m, margin 13.3 m")]
    [InlineData("counter/count-eye/1", "Pass: 1.6 m of 20 m, margin 18.4 m")]
    [InlineData("heads/dose-valve/1", "Pass: 1.8 m of 10 m, margin 8.2 m")]
    [InlineData("heads/dose-valve/2", "Pass: 1.6 m of 10 m, margin 8.4 m")]
    public void A_cable_is_as_long_as_its_way_its_drops_and_the_slack(string cable, string found) =>
        Assert.Equal(found, Check.Small.Built([.. Everything.Split(' '), "2 x heads"]).Found("ports.reach/" + cable));

    [Theory]
    [InlineData("cup-check/cup-eye/1", "10 m")]
    [InlineData("counter/count-eye/1", "2 m")]
    [InlineData("heads/dose-valve/1", "2 m")]
    public void The_next_length_in_stock_is_taken(string instance, string stock) => Assert.Equal(
        stock, Assert.Single(Devices("cup-check", "counter", "heads"), cable => cable.Instance.Key.ToString() == instance).Stock!.Written);

    // 2.5 + 0.8 + 1.5 + 0.2 = 5 m exactly, and a millimetre more.
    [Theory]
    [InlineData("2500 mm", "5 m")]
    [InlineData("2501 mm", "10 m")]
    public void A_length_in_stock_that_just_reaches_is_taken(string way, string stock)
    {
        var check = Check.Small
            .Machine("{from: middle, to: far-end}", $"{{from: middle, to: far-end, length: {way}}}")
            .Machine("drop: 700 mm", "drop: 1.5 m");
        Assert.Equal(stock, check.Built("cup-check").Cables.OfType<DeviceCable>().Single(cable => !cable.Home.IsDirect).Stock!.Written);
    }

    // Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) table 11: 20 m from port to device.
    // 18.3 + 0.8 + 0.7 + 0.2 = 20 m.
    [Theory]
    [InlineData("18300 mm", "Pass: 20 m of 20 m, margin 0 m")]
    [InlineData("18301 mm", "Fail: 20.001 m of 20 m, margin -0.001 m")]
    public void No_cable_to_a_port_is_longer_than_20_metres_even_if_the_stock_is(string way, string found) => Assert.Equal(found, Check.Small
        .Changing(SmallCatalogue.Device("cord-4"), "20 m]", "20 m, 25 m]")
        .Machine("{from: middle, to: far-end}", $"{{from: middle, to: far-end, length: {way}}}")
        .Built("cup-check").Found("ports.reach/cup-check/cup-eye/1"));

    [Fact]
    public void Every_cable_of_stock_is_too_short() => Check.Small
        .Changing(SmallCatalogue.Device("cord-4"), "2 m, 5 m, 10 m, 20 m", "2 m, 5 m")
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: [|front:1|]")
        .Says("CFG4004 `cup-check/cup-eye/1` at `front:1` needs a cable of 6.7 m with drops and slack; the limit is 5 m\nto fix: 1.7 m too long: give it a home nearer by");

    // The guard has terminals: its cable is cut on site and takes nothing from stock.
    [Fact]
    public void A_cable_to_terminals_is_cut_on_site()
    {
        var guard = Assert.Single(Devices(), cable => cable.Instance.Key.Source == "standard");
        Assert.Equal((null, "4.5 m"), (guard.Cordset, guard.Needed.ToString()));
    }

    [Fact]
    public void What_sits_in_the_box_has_no_field_cable() => Assert.DoesNotContain(Devices("agitator"), cable => cable.Instance.Key.Source == "agitator");

    private static IEnumerable<DeviceCable> Devices(params string[] picks) => Check.Small.Built(picks).Cables.OfType<DeviceCable>();
}
