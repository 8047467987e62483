using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Currents added up by hand: eye 40 mA, hub 30 mA, proximity switch behind it 20 mA, manifold 60 mA and 800 mA extra.</summary>
public class CurrentTests
{
    [Theory]
    [InlineData("ports.port-current/front:1", "Pass: 40 mA of 500 mA, margin 460 mA")]
    [InlineData("ports.port-current/front:2", "Pass: 50 mA of 500 mA, margin 450 mA")]
    [InlineData("ports.port-current/front:3", "Pass: 60 mA of 500 mA, margin 440 mA")]
    [InlineData("ports.port-current/count-hub:1", "Pass: 20 mA of 100 mA, margin 80 mA")]
    [InlineData("ports.extra-current/front:3", "Pass: 800 mA of 1600 mA, margin 800 mA")]
    [InlineData("ports.master-current/front", "Pass: 150 mA of 1000 mA, margin 850 mA")]
    [InlineData("ports.master-current/extra", "Pass: 60 mA of 1000 mA, margin 940 mA")]
    [InlineData("ports.master-current/count-hub", "Pass: 20 mA of 300 mA, margin 280 mA")]
    [InlineData("ports.master-extra/front", "Pass: 800 mA of 2000 mA, margin 1200 mA")]
    public void Currents_add_up_by_port_by_master_and_through_the_hub(string finding, string found) =>
        Assert.Equal(found, Check.Small.Built("film", "cup-check", "counter", "2 x heads").Found(finding));

    // Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.3.2: every port gives at least 200 mA.
    [Theory]
    [InlineData("200 mA", "Pass: 200 mA of 200 mA, margin 0 mA")]
    [InlineData("200.1 mA", "Fail: 200.1 mA of 200 mA, margin -0.1 mA")]
    public void A_port_of_which_nothing_is_stated_gives_200_milliamperes(string current, string found) => Assert.Equal(found, Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "  current-per-port: 500 mA\n", "")
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: " + current)
        .Built("cup-check").Found("ports.port-current/front:1"));

    // Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.5: 1.6 A (from memory).
    [Theory]
    [InlineData("1.6 A", "Pass: 1600 mA of 1600 mA, margin 0 mA")]
    [InlineData("1.7 A", "Fail: 1700 mA of 1600 mA, margin -100 mA")]
    public void A_class_B_port_of_which_nothing_is_stated_gives_1_6_amperes_extra(string current, string found) => Assert.Equal(found, Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "  extra-per-port: 1.6 A\n", "")
        .Changing(SmallCatalogue.Device("valves"), "extra-current: 800 mA", "extra-current: " + current)
        .Built("heads").Found("ports.extra-current/front:3"));

    [Fact]
    public void A_port_that_is_overloaded_is_reported_at_its_line_of_the_plan() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: 600 mA")
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: [|front:1|]")
        .Says("CFG4005 `cup-check/cup-eye/1` draws 600 mA at port `front:1`; the limit is 500 mA\nto fix: choose a device that draws less, or wire it another way");

    [Fact]
    public void A_master_that_is_overloaded_is_reported_at_its_name() => Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "current-in-all: 1 A", "current-in-all: 30 mA")
        .Machine("master: front", "master: [|front|]")
        .Says("CFG4007 everything plugged into `front` draws 40 mA; the limit is 30 mA");

    [Fact]
    public void What_is_behind_the_hub_loads_the_port_of_the_hub() => Assert.Equal(
        "ports.port-current/front:2",
        Check.Small
            .Changing(SmallCatalogue.Device("master-4"), "current-per-port: 500 mA", "current-per-port: 45 mA")
            .Built("cup-check", "counter").Failed());

    [Fact]
    public void All_actuators_of_a_master_on_together_may_be_too_much() => Assert.Equal(
        "Fail: 1600 mA of 1500 mA, margin -100 mA",
        Check.Small
            .Changing(SmallCatalogue.Device("master-4"), "extra-in-all: 2 A", "extra-in-all: 1.5 A")
            .Changing(SmallCatalogue.PortPlan, "dose-valve/2: extra:3", "dose-valve/2: front:4")
            .Built("2 x heads").Found("ports.master-extra/front"));
}
