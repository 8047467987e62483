using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class WiringTests
{
    private const string Page = "machines/cup-one/configurations/plain/wiring.html";

    [Fact]
    public void A_sensor_wired_directly_has_its_pins_named() => Assert.Contains(
        ":4 | 4 | BK | signal, C/Q | ",
        Check.Small
            .Changing(
                SmallCatalogue.Option("cup-check"), "device: eye", "device: eye\n    wiring: direct")
            .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: direct")
            .Section(Page, "field-wired"),
        StringComparison.Ordinal);

    // A safety switch on a stock cable is no three-wire sensor: what a core carries is said by its data sheet.
    [Fact]
    public void A_wired_device_has_no_pins_of_a_sensor()
    {
        var rows = Check.Small
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: m12-a-4")
            .Section(Page, "field-wired");
        Assert.Contains(":1 |  | BN | as the data sheet of the device says | ", rows, StringComparison.Ordinal);
        Assert.DoesNotContain("L+ 24 V", rows, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_with_terminals_gets_a_cable_cut_to_length()
    {
        Assert.DoesNotContain("BN", Check.Small.Section(Page, "field-wired"), StringComparison.Ordinal);
        Assert.Contains("Coded guard switch", Check.Small.Section(Page, "cut"), StringComparison.Ordinal);
    }
}
