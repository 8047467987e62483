using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class PartsTests
{
    private const string Page = "machines/tray-one/configurations/salad/parts.html";

    // Source: added up by hand from prices under tests/Cases/base/input/options/devices: devices 240 + 2 x 650 + 480 + 150
    // + 310 + 2 x 85 = 2650 EUR; cables 3 x 22 + 27 + 19 + 2 x 45 + 2 x 66 = 334 EUR.
    [Fact]
    public void Parts_of_the_small_machine_come_to_what_adding_by_hand_gives()
    {
        var page = Core.Documents.Documenter.Compose(BaseCatalogue.Whole.Check().Value, "").Value.Pages.Single(page => page.Path == Page);
        var tables = page.Sections.SelectMany(part => part.Blocks).OfType<Core.Documents.Blocks.Table>().ToDictionary(table => table.Id);
        var masters = tables["parts-list"].Rows.Single(row => row.Cells[0].Text.StartsWith("Field IO-Link master", StringComparison.Ordinal));
        Assert.Equal(("2", "=MAIN-KF1 =SIDE-KF1", "650 EUR", "1300 EUR"), (masters.Cells[1].Text, masters.Cells[4].Text, masters.Cells[8].Text, masters.Cells[9].Text));
        Assert.Equal("2984 EUR", tables["totals"].Rows[0].Cells[1].Text);
    }

    // Law: the total is the sum of the lines.
    [Fact]
    public void Totals_are_the_sums_of_their_lines() => Assert.All(DemoCatalogue.Documents.Sets, set =>
    {
        var lines = set.Find("parts-list")!.Rows.Concat(set.Find("stock-cables")!.Rows).Select(row => row.Cells[9].Text);
        var sum = lines.Where(line => line.Length > 0).Sum(line => decimal.Parse(line.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(sum, decimal.Parse(set.Find("totals")!.Rows[0].Cells[1].Text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture));
    });
}
