using Configurator.Core.Binding.Shapes;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class CableScheduleTests
{
    private static Row Of(string set, string cable) =>
        DemoCatalogue.Documents.Sets.Single(one => one.Name == set).Find("cable-schedule")!.Rows.Single(row => row.Cells[0].Text == cable);

    private static readonly DocumentSet Yoghurt = DemoCatalogue.Documents.Sets.Single(set => set.Engineered.Published.Id.Value.Value == "classic-yoghurt");

    // By hand from the route of the machine: up the box, over the bridge, along the upper tray to the outfeed.
    [Fact]
    public void The_data_cable_of_the_panel_is_laid_from_its_socket_in_the_box()
    {
        var row = Yoghurt.Find("laying-list")!.Rows.Single(row => row.Cells[0].Text == "=PANEL-WF1");
        Assert.Equal(
            ("+CONTROLBOX =PANEL-XF1", "+OUTFEED =PANEL-SF1:XF1", "network", "=PANEL-XF1", "50 mm"),
            (row.Cells[1].Text, row.Cells[2].Text, row.Cells[4].Text, row.Cells[5].Text, row.Cells[6].Text));
        Assert.Equal("box-entry > bridge > tray-middle > tray-lids > tray-sealing > tray-caps > tray-outfeed", row.Cells[3].Text);
    }

    [Fact]
    public void Rows_of_several_lanes_say_which_lane() => Assert.Equal(
        ["1", "2", "3", "4"],
        Enumerable.Range(1, 4).Select(lane => Of(Yoghurt.Name, $"=CUPEYE-WG{lane}").Cells[12].Text));

    // Source: usual clamping ranges of metric glands (from memory).
    [Theory]
    [InlineData("6.5 mm", "M12")]
    [InlineData("6.6 mm", "M16")]
    [InlineData("13.2 mm", "M25")]
    [InlineData("40 mm", "")]
    [InlineData(null, "")]
    public void A_gland_is_the_smallest_that_holds_the_cable(string? diameter, string gland) =>
        Assert.Equal(gland, Glands.For(diameter is null ? null : QuantityReader.Read(diameter).Quantity));

    // Source: sleeve lengths of DIN 46228-4 (from memory), and 2 mm.
    [Theory]
    [InlineData("0.34 mm2", "8 mm")]
    [InlineData("2.5 mm2", "10 mm")]
    [InlineData("0.4 mm2", "")]
    public void Insulation_is_taken_off_a_little_further_than_the_sleeve_is_long(string conductor, string strip) =>
        Assert.Equal(strip, Ferrules.StripFor(QuantityReader.Read(conductor).Quantity));
}
