using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class WiringTests
{
    private const string Page = "machines/cup-one/configurations/plain/wiring.html";

    // Source: IEC 60947-5-2 colours and pins; a ferrule for 0.34 mm2 after DIN 46228-4 (from memory).
    [Fact]
    public void A_sensor_wired_directly_has_its_pins_named() => Assert.Contains(
        ":4 | BK | 0.34 mm² | 0.34 × 6 mm | signal, C/Q | =CUPEYE-BX1 | moulded plug, pin 4 | ",
        Check.Small
            .Changing(
                SmallCatalogue.Option("cup-check"), "device: eye", "device: eye\n    wiring: direct")
            .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: direct")
            .Section(Page, "terminations"),
        StringComparison.Ordinal);

    // A safety switch on a stock cable is no three-wire sensor: what a core carries is said by its data sheet.
    [Fact]
    public void A_wired_device_has_no_pins_of_a_sensor()
    {
        var rows = Check.Small
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: m12-a-4")
            .Section(Page, "terminations");
        Assert.Contains("as the data sheet of the device says", rows, StringComparison.Ordinal);
        Assert.DoesNotContain("L+ 24 V", rows, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_that_says_nothing_of_its_cores_is_wired_after_its_data_sheet() => Assert.Contains(
        " | as the data sheet of the device says | ", Check.Small.Section(Page, "terminations"), StringComparison.Ordinal);

    [Fact]
    public void Each_core_of_a_cable_cut_to_length_has_its_terminal_and_a_shield_its_clamp()
    {
        var rows = Check.Small
            .Changing(
                SmallCatalogue.Device("guard-switch"),
                "plug: terminals",
                """
                plug: terminals
                leads:
                  conductor: 0.75 mm2
                  jacket: PUR
                  shielded: true
                  cores:
                    - {core: "1", at: "11", carries: channel 1}
                    - {core: GNYE, at: PE, carries: protective earth}
                """)
            .Section(Page, "terminations");
        Assert.Contains("/1 | =GUARD-XG1:1 | 1 | 0.75 mm² | 0.75 × 8 mm | channel 1 | =GUARD-SF1 | 11 | ", rows, StringComparison.Ordinal);
        Assert.Contains("/2 | =GUARD-XG1:2 | GNYE | ", rows, StringComparison.Ordinal);
        Assert.Contains("/shield | shield clamp at the entry | ", rows, StringComparison.Ordinal);
    }
}
