using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>Cables of all published configurations of the demonstration.</summary>
public class CableTests
{
    public static TheoryData<string> Sets { get; } =
        [.. DemoCatalogue.Documents.Sets.Select(set => set.Name).Order(StringComparer.Ordinal)];

    // Source: common practice, no source: what feeds has sleeves, so that no pin of an unplugged cable is live.
    [Theory]
    [MemberData(nameof(Sets))]
    public void A_cable_has_pins_where_it_takes_and_sleeves_where_it_gives_power(string name) => Assert.All(
        Rows(name, "plug-list").Where(row => !row.Cells[0].Text.Contains("-WF", StringComparison.Ordinal)),
        row => Assert.Equal(
            (row.Cells[2].Text == "wired by hand" ? "wired by hand" : "pins", "socket"),
            (row.Cells[2].Text.Contains("pins", StringComparison.Ordinal) ? "pins" : row.Cells[2].Text,
                row.Cells[4].Text.Contains("socket", StringComparison.Ordinal) ? "socket" : row.Cells[4].Text)));

    // Law: what takes the extra supply is on a port of class B, and every port that is plugged into has a class.
    [Theory]
    [MemberData(nameof(Sets))]
    public void The_plug_list_names_the_class_of_each_port(string name)
    {
        var classes = Rows(name, "plug-list").ToDictionary(row => row.Cells[0].Text, row => row.Cells[5].Text);
        var names = new Designations(DesignationStyle.Iec81346);
        Assert.All(Set(name).Engineered.Report.Cables.OfType<DeviceCable>().Where(cable => cable.Cordset is not null), cable =>
        {
            var own = classes[names.CableOf(cable.Instance)];
            Assert.Equal(cable.Home.IsDirect, own.Length == 0);
            Assert.True(cable.Instance.Device.PortClass != PortClass.B || own == "B", own);
        });
    }

    // Source: tests/Data/reference/m12_pinouts.csv (IEC 61076-2-111 and IEC 61918; L from memory, D corroborated).
    [Theory]
    [InlineData("L 5-pole", "=TRUNK-XD1")]
    [InlineData("D 4-pole", "=TRUNK-XF1")]
    public void The_trunk_leaves_the_box_with_the_colours_of_its_pins(string coding, string socket)
    {
        var published = CheckData.Rows("reference/m12_pinouts.csv").Where(row => row["coding"] == coding)
            .Select(row => (Pin: $"{socket}:{row["pin"]}", Colours: row["core_colour"].Split(" or ")));
        var rows = Rows(DemoCatalogue.Documents.Sets[0].Name, "trunk-socket").ToDictionary(row => row.Cells[0].Text, row => row.Cells[1].Text);
        Assert.All(published, pin => Assert.Contains(rows[pin.Pin], pin.Colours));
    }

    // Source: the same table: what is at 24 V on pins 1 and 4 of the L-coded plug is the sensor and the switched supply.
    [Fact]
    public void What_stops_drop_stands_at_the_pin_of_the_switched_supply()
    {
        var rows = Rows(DemoCatalogue.Documents.Sets[0].Name, "trunk-socket").ToDictionary(row => row.Cells[0].Text);
        Assert.StartsWith("+24 V sensors", rows["=TRUNK-XD1:1"].Cells[2].Text, StringComparison.Ordinal);
        Assert.StartsWith("+24 V actuators", rows["=TRUNK-XD1:4"].Cells[2].Text, StringComparison.Ordinal);
        Assert.NotEqual(rows["=TRUNK-XD1:1"].Cells[4].Text, rows["=TRUNK-XD1:4"].Cells[4].Text);
    }

    // Law: a stock cable is as long as its way or longer, and the next shorter one would not do.
    [Theory]
    [MemberData(nameof(Sets))]
    public void A_stock_length_is_the_shortest_that_reaches(string name) => Assert.All(
        Set(name).Engineered.Report.Cables.Where(cable => cable.Stock is not null),
        cable => Assert.DoesNotContain(
            cable.Cordset!.Cordset!.Lengths,
            length => length.InBase < cable.Stock!.InBase && length.InBase * 1000 >= cable.Needed!.Value.Value));

    // Source: IEC 81346: a designation is unique within its object.
    [Theory]
    [MemberData(nameof(Sets))]
    public void No_two_things_of_a_machine_have_one_designation(string name)
    {
        var names = Rows(name, "parts-list").Concat(Rows(name, "stock-cables")).SelectMany(row => row.Cells[4].Text.Split(' ')).ToList();
        Assert.Equal(names.Count, names.Distinct().Count());
    }

    // Source: IEC 81346-2 (tests/Data/reference/reference_designation_letters.csv): the first letter is a main class.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Letters_of_designations_begin_with_a_main_class(string name)
    {
        var classes = CheckData.Rows("reference/reference_designation_letters.csv").Select(row => row["letter"]).ToHashSet();
        Assert.All(
            Rows(name, "parts-list").SelectMany(row => row.Cells[4].Text.Split(' '))
                .Concat(Rows(name, "cable-schedule").Select(row => row.Cells[0].Text)),
            designation => Assert.Contains(designation[(designation.IndexOf('-', StringComparison.Ordinal) + 1)..][..1], classes));
    }

    private static DocumentSet Set(string name) => DemoCatalogue.Documents.Sets.Single(set => set.Name == name);

    private static IEnumerable<Row> Rows(string name, string table) => Set(name).Find(table)!.Rows;
}
