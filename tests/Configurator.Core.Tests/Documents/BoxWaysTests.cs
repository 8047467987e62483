using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>Where wires go inside the box, on all published configurations of the demonstration.</summary>
public class BoxWaysTests
{
    private const int LeadsOn = 9;

    public static TheoryData<string> Sets { get; } =
        [.. DemoCatalogue.Documents.Sets.Select(set => set.Name).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Sets))]
    public void The_switched_supply_reaches_its_pin_only_through_what_drops_it(string name)
    {
        var rows = Rows(name, "inside-box").ToDictionary(row => row.Cells[1].Text + " " + row.Cells[2].Text, row => row.Cells[0].Text);
        const string Live = "+24 V actuators, 2L+";
        Assert.Equal("=ACTUATORDROP-QA1:K2:2", rows[$"=TRUNK-XD1:4 {Live}"]);
        Assert.Equal("=ACTUATORDROP-QA1:K1:2", rows["=ACTUATORDROP-QA1:K2:1 main contacts in series"]);
        Assert.Equal("=BREAKERS-FC2:1", rows[$"=ACTUATORDROP-QA1:K1:1 {Live}"]);
        Assert.Equal("=SUPPLYSWITCHED-TB1:+", rows["=BREAKERS-FC2:+ +24 V feed of the breaker module"]);
        Assert.Equal("=SUPPLYSWITCHED-TB1:-", rows["=TRUNK-XD1:2 0 V actuators, 2M"]);
        Assert.Equal("=BREAKERS-FC1:1", rows["=TRUNK-XD1:1 +24 V sensors, L+"]);
        Assert.Equal("=SUPPLYPLAIN-TB1:+", rows["=BREAKERS-FC1:+ +24 V feed of the breaker module"]);
        Assert.Equal("=BREAKERS-FC1:3", rows["terminals of what is wired straight to the box +24 V for devices wired to the box"]);
    }

    // By hand: contacts drop what follows them, a breaker protects what follows it.
    [Theory]
    [MemberData(nameof(Sets))]
    public void What_comes_before_the_contacts_stays_alive_and_before_a_breaker_has_no_protection(string name) => Assert.Equal(
        [
            "=SUPPLYPLAIN-TB1:+: , no stop: stays alive",
            "=BREAKERS-FC1:1: 8 A, no stop: stays alive",
            "=SUPPLYSWITCHED-TB1:+: , no stop: stays alive",
            "=BREAKERS-FC2:1: 12 A, no stop: stays alive",
            "=ACTUATORDROP-QA1:K2:2: 12 A, emergency stop, guards",
            "=BREAKERS-FC1:3: 4 A, no stop: stays alive",
            "=BREAKERS-FC1:4: 6 A, no stop: stays alive",
        ],
        Rows(name, "inside-box").Where(row => row.Cells[4].Text.Length > 0 && row.Cells[2].Text.Contains("24 V", StringComparison.Ordinal))
            .DistinctBy(row => row.Cells[0].Text)
            .Select(row => $"{row.Cells[0].Text}: {row.Cells[3].Text}, {row.Cells[4].Text}"));

    [Theory]
    [MemberData(nameof(Sets))]
    public void A_core_that_is_folded_back_has_no_terminal(string name) => Assert.All(
        Rows(name, "termination-list"),
        row => Assert.Equal(row.Cells[5].Text.StartsWith("not used", StringComparison.Ordinal), row.Cells[1].Text == ""));

    // Source: two channels of safe torque off, IEC 61800-5-2 (from memory): each drive has its own pair of contacts.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_drive_has_both_channels_of_its_torque_dropped_by_a_pair_of_its_own(string name)
    {
        var wires = Rows(name, "inside-box").Where(row => row.Cells[2].Text.StartsWith("safe torque off", StringComparison.Ordinal)).ToList();
        Assert.Equal(
            Set(name).Engineered.Report.Fitted.Fitted.Where(instance => instance.Device.Kind == DeviceKind.Drive)
                .OrderBy(drive => drive.Option is not null)
                .Select(drive => new Designations(DesignationStyle.Iec81346).Of(drive))
                .SelectMany(drive => new[] { $"{drive}:STO1", $"{drive}:STO2" }),
            wires.Select(row => row.Cells[1].Text));
        Assert.All(
            wires.Select(row => row.Cells[0].Text).Chunk(2),
            pair => Assert.Equal([pair[0][..^1] + "1", pair[0][..^1] + "2"], pair));
        Assert.All(wires, row => Assert.Equal("emergency stop, guards", row.Cells[4].Text));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_terminal_of_what_is_mounted_inside_is_wired_once(string name) => Assert.Equal(
        Set(name).Engineered.Report.Fitted.Fitted.Where(instance => instance.Fit.Wiring == Wiring.Inside)
            .SelectMany(instance => instance.Device.Terminals.Select(terminal => $"{new Designations(DesignationStyle.Iec81346).Of(instance)}:{terminal.At}"))
            .Order(StringComparer.Ordinal),
        Rows(name, "inside-box").SelectMany(row => row.Cells.Take(2).Select(cell => cell.Text))
            .Where(Set(name).Engineered.Report.Fitted.Fitted.SelectMany(instance => instance.Device.Terminals.Select(terminal =>
                $"{new Designations(DesignationStyle.Iec81346).Of(instance)}:{terminal.At}")).ToHashSet().Contains)
            .Order(StringComparer.Ordinal));

    // Law: an input, an output, a contact, a port of the switch has one wire.
    [Theory]
    [MemberData(nameof(Sets))]
    public void No_two_wires_end_at_one_numbered_place(string name)
    {
        string[] owners = ["=SAFETYLOGIC-KF1:", "=CONTROLLER-KF1 ", "=TORQUEDROP-KF1:", "=BOXSWITCH-KF1:"];
        var ends = Rows(name, "termination-list").Select(row => row.Cells[LeadsOn].Text)
            .Concat(Rows(name, "inside-box").SelectMany(row => row.Cells.Take(2).Select(cell => cell.Text)))
            .Where(end => owners.Any(owner => end.StartsWith(owner, StringComparison.Ordinal))).ToList();
        Assert.All(owners, owner => Assert.Contains(ends, end => end.StartsWith(owner, StringComparison.Ordinal)));
        Assert.Equal(ends.Count, ends.Distinct().Count());
    }

    // By hand: the panel and the trunk leave the box by sockets of their own; port 1 of the switch is the trunk's.
    [Theory]
    [MemberData(nameof(Sets))]
    public void The_network_leaves_the_box_from_numbered_ports(string name)
    {
        var network = Rows(name, "inside-box").Where(row => row.Cells[2].Text == "network").ToDictionary(row => row.Cells[1].Text, row => row.Cells[0].Text);
        Assert.Equal("=BOXSWITCH-KF1:1", network["=TRUNK-XF1"]);
        Assert.StartsWith("=BOXSWITCH-KF1:", network["=PANEL-XF1"], StringComparison.Ordinal);
        Assert.Contains("=CONTROLLER-KF1:X1", network.Keys);
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_core_that_is_used_leads_on_to_somewhere(string name) => Assert.DoesNotContain(
        Rows(name, "termination-list").Where(row => !row.Cells[5].Text.Contains("not used", StringComparison.Ordinal)),
        row => row.Cells[LeadsOn].IsEmpty);

    // Law: an option never renumbers another, so that a wire goes to the same place on every machine of the model. Only
    // what feeds a motor may be another drive.
    [Fact]
    public void A_wire_leads_to_the_same_terminal_in_every_order_of_a_machine() => Assert.All(
        DemoCatalogue.Documents.Sets.GroupBy(set => set.Engineered.Machine.Id.Value),
        machine => Assert.All(
            machine.SelectMany(set => set.Find("termination-list")!.Rows)
                .Where(row => !row.Cells[LeadsOn].Text.Contains("DRIVE-TA", StringComparison.Ordinal))
                .Where(row => row.Cells[LeadsOn].Text.Contains(':', StringComparison.Ordinal) || row.Cells[LeadsOn].Text.Contains("fast input", StringComparison.Ordinal))
                .GroupBy(row => row.Cells[0].Text),
            wire => Assert.Single(wire.Select(row => row.Cells[LeadsOn].Text).Distinct())));

    // Source: common practice, no source: the one cable of a servo motor is plugged into its drive, its data pair and brake
    // with it; only earth and shield end elsewhere.
    [Fact]
    public void The_cable_of_a_servo_motor_goes_to_its_drive_without_terminals() => Assert.Equal(
        [
            "=INDEXDRIVE-TA1:U ends there", "=INDEXDRIVE-TA1:V ends there", "=INDEXDRIVE-TA1:W ends there", "=INDEXMOTOR-XG1:4 PE bar",
            "=INDEXDRIVE-TA1:B+ ends there", "=INDEXDRIVE-TA1:B- ends there", "=INDEXDRIVE-TA1:D+ ends there", "=INDEXDRIVE-TA1:D- ends there",
            "shield clamp at the entry PE bar",
        ],
        Rows("p4-101", "termination-list").Where(row => row.Cells[0].Text.StartsWith("=INDEXMOTOR-WD1/", StringComparison.Ordinal))
            .Select(row => $"{row.Cells[1].Text} {row.Cells[LeadsOn].Text}"));

    [Fact]
    public void The_enable_of_a_laser_takes_two_safety_outputs_and_says_what_drops_it()
    {
        var set = DemoCatalogue.Documents.Sets.First(set => set.Engineered.Published.Options.Any(option => option.Value.Value == "laser-coding"));
        Assert.Equal("2", set.Find("safety-devices")!.Rows.Single(row => row.Cells[0].Text == "=CODERLASER-PG1").Cells[5].Text);
        Assert.Equal("emergency stop, guards, laser cover", set.Find("stops")!.Rows.Single(row => row.Cells[0].Text == "=CODERLASER-PG1").Cells[2].Text);
    }

    // Source: IO-Link Interface and System Specification v1.1.x 5.5, public pin tables: pin 5 carries the extra supply
    // alone.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Only_what_takes_the_extra_supply_has_a_cable_with_five_cores(string name) => Assert.All(
        Set(name).Engineered.Report.Cables.OfType<DeviceCable>().Where(cable => cable is { Home.IsDirect: false, Cordset: not null }),
        cable => Assert.Equal(cable.Instance.Device.PortClass == PortClass.B ? 5 : 4, cable.Cordset!.Cordset!.Cores.Length));

    private static DocumentSet Set(string name) => DemoCatalogue.Documents.Sets.Single(set => set.Name == name);

    private static IEnumerable<Row> Rows(string name, string table) => Set(name).Find(table)!.Rows;
}
