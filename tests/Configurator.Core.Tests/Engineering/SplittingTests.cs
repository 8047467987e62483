using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Two plain signals of one option at one port, at pins 4 and 2.</summary>
public class SplittingTests
{
    private const string Splitter = """
        device: splitter
        title: Splitter
        kind: splitter
        letters: XD
        connection: none
        plug: m12-a-4

        """;

    private const string Gates = """
        option: gates
        title: Gates
        summary: Sees both gates
        offered-on: [cup-one]
        fits:
          - {fit: gate-eye, device: prox, stations: [filler, filler], purpose: Sees a gate}

        """;

    private static readonly Check Split = Check
        .Small.With(Splitter)
        .With(Gates)
        .Machine("  spare-ports: 1", "  spare-ports: 1\n  splitter: splitter")
        .Changing(
            SmallCatalogue.PortPlan,
            "  heads/dose-valve/1:",
            "  gates/gate-eye/1: front:1\n  gates/gate-eye/2: front:1/pin-2\n  heads/dose-valve/1:"
        )
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: front:4");

    [Fact]
    public void Two_plain_signals_of_one_option_share_a_port_through_a_splitter()
    {
        var built = Split.Built("gates");

        Assert.Equal("Pass: 2 of 2, margin 0", built.Found("ports.sharing/front:1"));
        Assert.Equal("Pass", built.Found("ports.class/gates/gate-eye/2"));
        Assert.Equal("Pass: 40 mA of 500 mA, margin 460 mA", built.Found("ports.port-current/front:1"));
    }

    [Fact]
    public void Two_at_the_same_pin_are_one_too_many() =>
        Assert.Equal(
            "Fail: 2 of 1, margin -1",
            Split.Changing(SmallCatalogue.PortPlan, "front:1/pin-2", "front:1").Built("gates").Found("ports.sharing/front:1")
        );

    [Fact]
    public void Without_a_splitter_in_stock_a_port_carries_one_signal()
    {
        var built = Split.Machine("  splitter: splitter\n", "").Built("gates");

        Assert.Equal("Fail: 2 of 1, margin -1", built.Found("ports.sharing/front:1"));
        Assert.Equal("Fail", built.Found("ports.class/gates/gate-eye/2"));
    }

    [Fact]
    public void A_port_that_does_nothing_with_pin_2_takes_no_splitter() =>
        Assert.Equal(
            "Fail",
            Split
                .Changing(SmallCatalogue.Device("master-4"), "  pin-2: either", "  pin-2: output")
                .Built("gates")
                .Found("ports.class/gates/gate-eye/2")
        );

    [Fact]
    public void A_device_that_talks_IO_Link_is_not_at_pin_2() =>
        Assert.Equal(
            "Fail",
            Split
                .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:4", "cup-eye/1: front:2/pin-2")
                .Built("cup-check")
                .Found("ports.class/cup-check/cup-eye/1")
        );

    [Fact]
    public void Signals_of_two_options_do_not_share_a_splitter() =>
        Assert.Equal(
            "Fail: 2 of 1, margin -1",
            Split
                .Changing(SmallCatalogue.PortPlan, "gates/gate-eye/2: front:1/pin-2", "gates/gate-eye/2: front:2")
                .Changing(SmallCatalogue.PortPlan, "count-eye/1: count-hub:1", "count-eye/1: front:1/pin-2")
                .Built("gates", "counter")
                .Found("ports.sharing/front:1")
        );
}
