using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>What is measured on a finished machine, on all published configurations of the demonstration.</summary>
public class AcceptanceSheetTests
{
    private static readonly Designations Names = new(DesignationStyle.Iec81346);

    public static TheoryData<string> Sets { get; } =
        [.. DemoCatalogue.Documents.Sets.Select(set => set.Name).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_step_has_a_number_of_its_own(string name)
    {
        var steps = Tests(Set(name)).Select(row => row.Cells[0].Text.Split(' ')[0]).ToList();
        Assert.True(steps.Count > 40);
        Assert.Equal(steps.Count, steps.Distinct().Count());
    }

    // Source: IEC 60204-1 18.3 and 18.6 (from memory).
    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_motor_and_heater_is_tested_for_insulation_and_for_what_it_does(string name) => Assert.All(
        Set(name).Engineered.Report.Fitted.Fitted.Where(instance => instance.Device.Kind == DeviceKind.Motor || instance.Device.Letters == "EB"),
        load =>
        {
            var rows = Rows(Set(name), "test-loads").Where(row => row.Cells[0].Text.Contains(Names.Of(load), StringComparison.Ordinal)).ToList();
            Assert.Contains(rows, row => row.Cells[1].Text.Contains("500 V DC", StringComparison.Ordinal));
            Assert.Contains(rows, row => row.Cells[3].Text.StartsWith('='));
        });

    // By hand from what the cores of each load carry: a brake, an encoder or a winding sensor never gets 500 V.
    [Theory]
    [InlineData("=INDEXMOTOR-MA1", "U, V, W joined, to PE, 500 V DC", "; holding brake, encoder data: cores stay off")]
    [InlineData("=BELTMOTOR-MA1", "U1, V1, W1 joined, to PE, 500 V DC", "; winding sensor: cores stay off")]
    [InlineData("=SEALPLATE-EB1", "L1, L2, L3 joined, to PE, 500 V DC", "electronics and probes disconnected")]
    public void Only_phases_get_the_test_voltage(string load, string start, string rest)
    {
        var measure = Measure(load, "500 V DC");
        Assert.StartsWith(start, measure, StringComparison.Ordinal);
        Assert.Contains(rest, measure, StringComparison.Ordinal);
    }

    // By hand: a star of P at U has 3 resistances of U²/P, a delta of 3U²/P each; both show 2U²/P between two lines.
    [Fact]
    public void Three_phases_show_twice_what_one_would() => Assert.Equal(
        "the same between all phases: 2·U²/P, star or delta; U between phases",
        Loads("=SEALPLATE-EB1").First().Cells[2].Text);

    [Fact]
    public void A_motor_without_a_drive_has_no_lowest_speed()
    {
        Assert.Equal("short run, guards closed", Measure("=FUMEFAN-GQ1", "short run"));
        Assert.Equal("short run at the lowest speed, guards closed", Measure("=BELTMOTOR-MA1", "short run"));
        Assert.All(
            Loads("-MA1").Concat(Loads("-GQ1")).Where(row => row.Cells[1].Text.StartsWith("short run", StringComparison.Ordinal)),
            row => Assert.StartsWith("direction by the arrow; ", row.Cells[2].Text, StringComparison.Ordinal));
    }

    private static string Measure(string load, string what) =>
        Loads(load).First(row => row.Cells[1].Text.Contains(what, StringComparison.Ordinal)).Cells[1].Text;

    private static IEnumerable<Row> Loads(string load) =>
        DemoCatalogue.Documents.Sets.SelectMany(set => Rows(set, "test-loads"))
            .Where(row => row.Cells[0].Text.Contains(load, StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Sets))]
    public void Both_outlets_at_the_end_of_the_trunk_are_capped(string name)
    {
        var outlets = Names.OutletsOf(Set(name).Engineered.Report.Fitted.Masters[^1]);
        Assert.All(outlets, outlet => Assert.Contains(
            Rows(Set(name), "test-ports"), row => row.Cells[0].Text.EndsWith(outlet, StringComparison.Ordinal) && row.Cells[2].Text == "capped and tight"));
        var capped = Rows(Set(name), "parts-list").Single(row => row.Cells[10].Text == "cap-m12").Cells[4].Text.Split(' ');
        Assert.All(outlets, outlet => Assert.Contains(outlet, capped));
    }

    [Fact]
    public void Two_supplies_are_tested_for_being_apart() => Assert.All(
        DemoCatalogue.Documents.Sets,
        set => Assert.Contains(Rows(set, "test-power"), row => row.Cells[2].Text == "no continuity"));

    [Fact]
    public void What_goes_straight_to_a_fast_input_is_made_to_switch() => Assert.All(
        DemoCatalogue.Documents.Sets,
        set => Assert.Contains(Rows(set, "test-direct"), row => row.Cells[3].Text.EndsWith("fast input 1", StringComparison.Ordinal)));

    private static DocumentSet Set(string name) => DemoCatalogue.Documents.Sets.Single(set => set.Name == name);

    private static IEnumerable<Row> Tests(DocumentSet set) =>
        set.Tables.SelectMany(pair => pair.Tables).Where(table => table.Id.StartsWith("test-", StringComparison.Ordinal)).SelectMany(table => table.Rows);

    // Source: IO-Link Interface and System Specification v1.1.x 5.5 (from memory): pins 2 and 5 of a class B port carry the
    // extra supply, whatever is plugged in.
    [Fact]
    public void Whatever_is_made_for_class_a_is_looked_at_before_it_meets_a_class_b_port() => Assert.All(
        DemoCatalogue.Documents.Sets,
        set => Assert.Equal(
            set.Engineered.Report.Fitted.Masters.SelectMany(master => set.Engineered.Report.Fitted.PluggedInto(master.Name.Value)
                    .Where(pair => master.Ports.ClassOf(pair.Home.Port) == PortClass.B && pair.Instance.Device.PortClass == PortClass.A))
                .Count(),
            Rows(set, "test-ports").Count(row => row.Cells[1].Text.StartsWith("before plugging: pin 2", StringComparison.Ordinal))));

    // By hand: one line for each plain input and output of the box that the configuration takes.
    [Fact]
    public void Every_plain_input_and_output_of_the_box_is_tried() => Assert.All(
        DemoCatalogue.Documents.Sets,
        set => Assert.Equal(
            Rows(set, "signals").Where(row => row.Cells[12].Text is "input of the box" or "output of the box").Select(row => row.Cells[4].Text),
            Rows(set, "test-direct").Select(row => row.Cells[3].Text).Where(place => place.Contains(" plain ", StringComparison.Ordinal))));

    private static IEnumerable<Row> Rows(DocumentSet set, string table) => set.Find(table)!.Rows;
}
