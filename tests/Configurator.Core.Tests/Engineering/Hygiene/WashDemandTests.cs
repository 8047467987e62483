using System.Collections.Immutable;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Engineering.Hygiene;

public class WashDemandTests
{
    private static readonly ImmutableArray<string> Solids = ["X", "0", "1", "2", "3", "4", "5", "5K", "6", "6K"];

    private static readonly ImmutableArray<string> Water =
        ["X", "0", "1", "2", "3", "4", "4K", "5", "6", "6K", "7", "8", "9", "9K"];

    // Source: the codes that a method asks for are common practice, no source; what each code is tested with: IEC 60529.
    [Theory]
    [InlineData(AreaClass.NonFood, WashMethod.Dry, "IP54")]
    [InlineData(AreaClass.NonFood, WashMethod.Rinse, "IP65")]
    [InlineData(AreaClass.Splash, WashMethod.Foam, "IP66")]
    [InlineData(AreaClass.Splash, WashMethod.HotHighPressure, "IP66 + IP69 or IP69K")]
    [InlineData(AreaClass.Food, WashMethod.Dry, "IP54")]
    [InlineData(AreaClass.Food, WashMethod.Foam, "IP66 + IP67")]
    [InlineData(AreaClass.Food, WashMethod.HotHighPressure, "IP66 + IP69 or IP69K + IP67")]
    public void An_area_asks_for_codes_by_its_class_and_its_washing(AreaClass area, WashMethod wash, string asked) =>
        Assert.Equal(asked, string.Join(" + ", WashDemands.Of(area, wash).Select(demand => demand.Text)));

    // Source: IEC 60529 clause 6 by the reference rows: IP67 shows no jets, IP69K no immersion, two codes show both.
    [Theory]
    [InlineData("IP67", WashMethod.Foam, Shown.No)]
    [InlineData("IP66", WashMethod.Foam, Shown.No)]
    [InlineData("IP66/IP67", WashMethod.Foam, Shown.Yes)]
    [InlineData("IP67/IP69K", WashMethod.HotHighPressure, Shown.No)]
    [InlineData("IP66/IP67/IP69K", WashMethod.HotHighPressure, Shown.Yes)]
    [InlineData("IP66/IP67/IP69", WashMethod.HotHighPressure, Shown.Yes)]
    [InlineData("IP66K/IP67", WashMethod.Foam, Shown.Review)]
    [InlineData("IP67", WashMethod.Dry, Shown.Unstated)]
    [InlineData("", WashMethod.Dry, Shown.Unstated)]
    public void A_marking_in_a_food_area_shows(string marking, WashMethod wash, Shown shown) =>
        Assert.Equal(shown, Worst(Codes(marking), AreaClass.Food, wash));

    // Law: over every pair of codes, a more severe washing or a food area shows no more than a milder one.
    [Fact]
    public void A_stricter_area_never_turns_a_failure_into_a_pass()
    {
        var codes = Solids.SelectMany(solids => Water.Select(water => $"IP{solids}{water}")).ToList();
        foreach (var marking in codes.SelectMany(one => codes.Select(other => ImmutableArray.Create(one, other))))
        {
            var previous = Shown.Yes;
            foreach (var wash in Enum.GetValues<WashMethod>())
            {
                var splash = Worst(marking, AreaClass.Splash, wash);
                Assert.True(splash <= previous, $"{string.Join('/', marking)} {wash}");
                Assert.True(splash <= Worst(marking, AreaClass.NonFood, wash), $"{string.Join('/', marking)} splash {wash}");
                Assert.True(Worst(marking, AreaClass.Food, wash) <= splash, $"{string.Join('/', marking)} food {wash}");
                previous = splash;
            }
        }
    }

    private static ImmutableArray<string> Codes(string marking) =>
        marking.Length == 0 ? [] : [.. marking.Split('/')];

    private static Shown Worst(ImmutableArray<string> marking, AreaClass area, WashMethod wash) =>
        WashDemands.Of(area, wash).Min(demand => WashDemands.Shows(marking, demand));
}
