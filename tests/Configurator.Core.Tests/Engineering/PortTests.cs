using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

public class PortTests
{
    // Source: tests/Data/port_compatibility.csv. Definitions know plain PNP signals only, so that the NPN row cannot be written.
    [Fact]
    public void Devices_meet_the_ports_that_published_tables_allow() => Assert.All(
        CheckData.Rows("port_compatibility.csv").Where(row => DeviceOf(row["device_needs"]) is not null),
        row => Assert.Equal(
            row["allowed"] == "yes",
            PortCompatibility.Objection(DeviceOf(row["device_needs"])!, Enum.Parse<PortClass>(row["port_class"]), PinTwoOffer.Either) is null));

    [Fact]
    public void Every_row_but_the_one_of_npn_is_compared() => Assert.Equal(
        ["binary NPN sensor"],
        CheckData.Rows("port_compatibility.csv").Select(row => row["device_needs"]).Where(needs => DeviceOf(needs) is null));

    // Source: the same table, "port must offer DI or DQ on pin 2".
    [Fact]
    public void A_second_signal_needs_a_port_that_does_something_with_pin_2() => Assert.NotNull(
        PortCompatibility.Objection(DeviceOf("class A device with second signal on pin 2")!, PortClass.A, PinTwoOffer.None));

    [Fact]
    public void A_hub_port_takes_plain_signals_and_nothing_else()
    {
        Assert.Null(PortCompatibility.Objection(DeviceOf("binary PNP sensor")!, PortClass.Switching, PinTwoOffer.None));
        Assert.NotNull(PortCompatibility.Objection(DeviceOf("class A device, pin 2 and 5 unused")!, PortClass.Switching, PinTwoOffer.None));
        Assert.NotNull(PortCompatibility.Objection(DeviceOf("class B device")!, PortClass.Switching, PinTwoOffer.None));
    }

    [Fact]
    public void A_class_B_device_on_a_class_A_port_is_reported_at_its_home() => Check.Small
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, heads]")
        .Changing(SmallCatalogue.PortPlan, "dose-valve/1: front:3", "dose-valve/1: [|front:1|]")
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: front:4")
        .Says(
            """
            CFG4003 `valves` of `heads/dose-valve/1` must not be plugged into the class A port `front:1`: a class A port has no extra supply for a class B device
            to fix: give it a home on a free class B port
            """);

    [Fact]
    public void Two_devices_at_one_port_are_reported() => Check.Small
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, cup-check, counter]")
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: [|front:2|]")
        .Says("CFG4002 port `front:2` carries `counter/count-hub/1` and `cup-check/cup-eye/1`; the limit is 1\nto fix: give one of them another home");

    [Fact]
    public void Two_that_are_never_built_together_may_share_a_port()
    {
        var check = Check.Small
            .Changing(SmallCatalogue.PortPlan, "dose-valve/1: front:3", "dose-valve/1: front:4")
            .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: front:4");
        Assert.Equal("Pass: 1 of 1, margin 0", check.Built("cup-check").Found("ports.sharing/front:4"));
        Assert.Equal("Pass: 1 of 1, margin 0", check.Built("heads").Found("ports.sharing/front:4"));
        Assert.Equal("Fail: 2 of 1, margin -1", check.Built("cup-check", "heads").Found("ports.sharing/front:4"));
    }

    [Fact]
    public void A_home_that_is_missing_is_reported_at_the_plan() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "  cup-check/cup-eye/1: front:1\n", "")
        .Changing(SmallCatalogue.PortPlan, "port-plan: cup-one", "port-plan: [|cup-one|]")
        .Says("CFG4001 `cup-check/cup-eye/1` has no home in the port plan\nto fix: add the line `cup-check/cup-eye/1: MASTER:PORT`");

    [Fact]
    public void A_device_for_a_port_is_not_at_home_in_the_box() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: [|direct|]")
        .Says("CFG4001 `cup-check/cup-eye/1` is wired to a port, but its home is `direct`\nto fix: name a port, or set `wiring: direct` on the fit");

    [Fact]
    public void A_device_wired_into_the_box_is_not_at_home_on_a_port() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "guard/1: direct", "guard/1: [|front:4|]")
        .Says("CFG4001 `standard/guard/1` is wired directly into the box, but its home is `front:4`\nto fix: write `direct`");

    [Fact]
    public void A_hub_that_is_not_fitted_is_no_home() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: [|count-hub:2|]")
        .Changing(SmallCatalogue.Device("eye"), "connection: io-link", "connection: switching")
        .Says("CFG4001 `cup-check/cup-eye/1` is at home on `count-hub`, which is not fitted with it");

    // Four ports a master; what is used is counted by hand.
    [Theory]
    [InlineData("", "Pass: 4 of 1, margin 3")]
    [InlineData("cup-check", "Pass: 3 of 1, margin 2")]
    [InlineData("cup-check counter heads", "Pass: 1 of 1, margin 0")]
    public void Spare_ports_are_those_that_nothing_is_plugged_into(string picks, string found) =>
        Assert.Equal(found, Check.Small.Built(picks.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Found("ports.spare/front"));

    [Fact]
    public void Too_few_spare_ports_are_reported_at_the_master() => Check.Small
        .Machine("spare-ports: 1", "spare-ports: 4")
        .Machine("master: front", "master: [|front|]")
        .Says("CFG4009 master `front` has 3 of 4 ports free; the limit is 4\nto fix: give some of its fits a home elsewhere, or add a master");

    private static Device? DeviceOf(string needs)
    {
        var device = new Device(new(new("device"), default), Text.Empty, DeviceKind.Sensor, "BX");
        return needs switch
        {
            "class A device, pin 2 and 5 unused" => device with { Connection = ConnectionKind.IoLink },
            "class A device with second signal on pin 2" => device with { Connection = ConnectionKind.IoLink, PinTwo = PinTwoUse.Signal },
            "class B device" => device with { Connection = ConnectionKind.IoLink, PortClass = PortClass.B, PinTwo = PinTwoUse.Supply },
            "binary PNP sensor" => device with { Connection = ConnectionKind.Switching },
            _ => null,
        };
    }
}
