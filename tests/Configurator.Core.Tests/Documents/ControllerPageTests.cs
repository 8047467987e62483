using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class ControllerPageTests
{
    private const string Page = "machines/cup-one/configurations/plain/controller.html";

    /// <summary>A cup eye with described process data, a counter behind a hub, heads, a safety switch of two channels.</summary>
    private static readonly Check Rich = Check.Small
        .Changing(SmallCatalogue.Device("eye"), "cycle: 2.3 ms}", "cycle: 2.3 ms, identity: {vendor: 65535, device: 7}, process-data: {inputs: ["
            + "{name: contrast, title: Contrast, type: UIntegerT, octet: 0, bit: 2, length: 14, from: 0 percent, to: 100 percent, step: 0.1 percent}, "
            + "{name: seen, title: Cup is seen, type: BooleanT, octet: 1}]}}")
        .Changing(SmallCatalogue.Device("hub-4"), "cycle: 3 ms}", "cycle: 3 ms, identity: {vendor: 65535, device: 8}, process-data: {inputs: ["
            + "{name: socket1, title: One, type: BooleanT, octet: 0, bit: 3, port: 1}, {name: supply-low, title: Supply is low, type: BooleanT, octet: 0, bit: 7}]}}")
        .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: terminals\nsafety: {inputs: 2, outputs: 1, test-pulses: own}")
        .Changing(SmallCatalogue.Plain, "options: [film, cup-check]", "options: [film, cup-check, counter]\nquantities: {heads: 2}");

    // Source: hand calculation. 14 bits above bit 2 of octet 1 of two: offset 2; bit 0 of the last octet: offset 0. The hub
    // has one octet: bit 3 is offset 3. Four octets to the valves that nobody describes, one from them.
    [Fact]
    public void Every_signal_stands_at_the_home_of_its_fit() => Assert.Equal(
        [
            "cup_eye_1_contrast | Contrast | Sees the cup | =CUPEYE-BX1 | =FRONT-KF1:1 | 0 | 2 | 2 | UIntegerT(14) | 0 … 100 | % | 0.1 | input | enable_cup_check",
            "cup_eye_1_seen | Cup is seen | Sees the cup | =CUPEYE-BX1 | =FRONT-KF1:1 | 1 | 0 | 0 | BooleanT |  |  |  | input | enable_cup_check",
            "count_hub_1_supply_low | Supply is low | Gathers plain signals | =COUNTHUB-KF1 | =FRONT-KF1:2 | 0 | 7 | 7 | BooleanT |  |  |  | input | enable_counter",
            "count_eye_1_signal | switching signal | Counts | =COUNTEYE-BG1 | =FRONT-KF1:2, =COUNTHUB-KF1:1 | 0 | 3 | 3 | BooleanT |  |  |  | input | enable_counter",
            "dose_valve_1_raw_in | octets that no definition describes | Opens the head | =DOSEVALVE-QM1 | =FRONT-KF1:3 |  |  |  | OctetStringT(1) |  |  |  | input | enable_heads",
            "dose_valve_1_raw_out | octets that no definition describes | Opens the head | =DOSEVALVE-QM1 | =FRONT-KF1:3 |  |  |  | OctetStringT(4) |  |  |  | output | enable_heads",
            "dose_valve_2_raw_in | octets that no definition describes | Opens the head | =DOSEVALVE-QM2 | =EXTRA-KF1:3 |  |  |  | OctetStringT(1) |  |  |  | input | (count_heads >= 2)",
            "dose_valve_2_raw_out | octets that no definition describes | Opens the head | =DOSEVALVE-QM2 | =EXTRA-KF1:3 |  |  |  | OctetStringT(4) |  |  |  | output | (count_heads >= 2)",
            "guard_1_channel1 | safety channel, for display alone | Stops the filler | =GUARD-SF1 | I1 |  |  |  | BooleanT |  |  |  | input of the safety controller | always",
            "guard_1_channel2 | safety channel, for display alone | Stops the filler | =GUARD-SF1 | I2 |  |  |  | BooleanT |  |  |  | input of the safety controller | always",
            "guard_1_output1 | safety channel, for display alone | Stops the filler | =GUARD-SF1 | Q1 |  |  |  | BooleanT |  |  |  | output of the safety controller | always",
        ],
        CheckTables.Lines(PageOf(Rich), "signals"));

    // Source: the port plan and devices above; hand calculation of the cycle octets: 2.3 ms = 23 × 0.1 ms (0x17),
    // 3 ms = 0x1E, 4 ms = 0x28 (IO-Link B.1.3).
    // Source: IO-Link Interface and System Specification v1.1.x 5.5 (from memory): a class B port carries its extra supply
    // whatever is plugged in.
    [Fact]
    public void Every_port_is_set_and_those_that_nothing_uses_are_off() => Assert.Equal(
        [
            "=FRONT-KF1:1 | =CUPEYE-BX1 | IO-Link | off | Contrast sensor | 65535 (0xFFFF) | 7 (0x000007) | same type | 2.3 ms (0x17) | off: the controller writes the settings | inputs 0 and not valid",
            "=FRONT-KF1:2 | =COUNTHUB-KF1 | IO-Link | off | Hub for four plain signals | 65535 (0xFFFF) | 8 (0x000008) | same type | 3 ms (0x1E) | backup and restore | inputs 0 and not valid",
            "=FRONT-KF1:3 | =DOSEVALVE-QM1 | IO-Link | extra supply 2L+ | Valve manifold |  |  | none: its identity is not defined | 4 ms (0x28) | off until the device is checked | inputs 0 and not valid; outputs 0 (off)",
            "=FRONT-KF1:4 |  | off | extra supply 2L+ |  |  |  |  |  |  | ",
            "=EXTRA-KF1:1 |  | off | off |  |  |  |  |  |  | ",
            "=EXTRA-KF1:2 |  | off | off |  |  |  |  |  |  | ",
            "=EXTRA-KF1:3 | =DOSEVALVE-QM2 | IO-Link | extra supply 2L+ | Valve manifold |  |  | none: its identity is not defined | 4 ms (0x28) | off until the device is checked | inputs 0 and not valid; outputs 0 (off)",
            "=EXTRA-KF1:4 |  | off | extra supply 2L+ |  |  |  |  |  |  | ",
            "=COUNTHUB-KF1:1 | =COUNTEYE-BG1 | digital input |  | Proximity switch |  |  |  |  |  | inputs 0 and not valid",
            "=COUNTHUB-KF1:2 |  | off |  |  |  |  |  |  |  | ",
            "=COUNTHUB-KF1:3 |  | off |  |  |  |  |  |  |  | ",
            "=COUNTHUB-KF1:4 |  | off |  |  |  |  |  |  |  | ",
        ],
        CheckTables.Lines(PageOf(Rich), "port-settings"));

    [Fact]
    public void Constants_say_what_is_ordered_and_how_many()
    {
        var lines = CheckTables.Lines(PageOf(Rich), "enable-bits");
        Assert.Contains("enable_film | TRUE | Lid film", lines);
        Assert.Contains("enable_precut | FALSE | Pre-cut lids", lines);
        Assert.Contains("count_heads | 2 | Dosing heads", lines);
    }

    [Fact]
    public void A_plain_sensor_at_a_port_of_a_master_stands_at_its_pin() => Assert.Contains(
        "| =FRONT-KF1:2 pin 4 |",
        Rich.Changing(SmallCatalogue.PortPlan, "count-eye/1: count-hub:1", "count-eye/1: front:2")
            .Changing(SmallCatalogue.PortPlan, "count-hub/1: front:2", "count-hub/1: extra:1")
            .Section(Page, "signals"),
        StringComparison.Ordinal);

    [Fact]
    public void A_sensor_wired_into_the_box_has_a_fast_input()
    {
        var direct = Rich
            .Changing(SmallCatalogue.Option("cup-check"), "device: eye", "device: eye\n    wiring: direct")
            .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: direct");
        Assert.Contains("cup_eye_1_signal | switching signal | Sees the cup | =CUPEYE-BX1 | fast input 1 |", direct.Section(Page, "signals"), StringComparison.Ordinal);
    }

    // Second way: the counts that the box is checked with are sums over cables and devices.
    [Fact]
    public void Signals_into_the_box_are_as_many_as_the_findings_count()
    {
        var site = DemoCatalogue.Documents;
        foreach (var configuration in DemoCatalogue.Engineered.Configurations)
        {
            var page = site.Pages.Single(page => page.Path == PagePaths.Of(configuration.Published, "controller"));
            var directions = CheckTables.Column(page, "signals", 12);
            Assert.Equal(Counted(configuration, BoxChecks.DirectInputs), directions.Count(cell => cell == "fast input of the box"));
            Assert.Equal(Counted(configuration, SafetyChecks.Inputs), directions.Count(cell => cell == "input of the safety controller"));
            Assert.Equal(Counted(configuration, SafetyChecks.Outputs), directions.Count(cell => cell == "output of the safety controller"));
        }
    }

    // Second way: the port map lists the same ports, device by device.
    [Fact]
    public void Every_port_of_the_port_map_is_set_once()
    {
        var site = DemoCatalogue.Documents;
        foreach (var configuration in DemoCatalogue.Engineered.Configurations)
        {
            var map = site.Pages.Single(page => page.Path == PagePaths.Of(configuration.Published, "port-map"));
            var ports = map.Sections.SelectMany(section => section.Blocks).OfType<Table>()
                .Where(table => table.Id.StartsWith("ports-", StringComparison.Ordinal))
                .SelectMany(table => table.Rows.Select(row => row.Cells[0].Text)).Count(port => !port.Contains("pin 2", StringComparison.Ordinal));
            var page = site.Pages.Single(page => page.Path == PagePaths.Of(configuration.Published, "controller"));
            var settings = CheckTables.Column(page, "port-settings", 0);
            Assert.Equal(ports, settings.Length);
            Assert.Equal(settings.Length, settings.Distinct(StringComparer.Ordinal).Count());
        }
    }

    private static decimal Counted(EngineeredConfiguration configuration, FindingRule rule) =>
        decimal.Parse(
            configuration.Report.Findings.Single(finding => finding.Rule == rule).Value!.Value.ToString(),
            System.Globalization.CultureInfo.InvariantCulture);

    private static Page PageOf(Check check) =>
        Documenter.Compose(check.Engineered, "").Value.Pages.Single(page => page.Path == Page);
}
