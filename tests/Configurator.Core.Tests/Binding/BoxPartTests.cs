using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Parts of the box that other lines name.</summary>
public class BoxPartTests
{
    [Fact]
    public void A_breaker_channel_is_of_a_fit_of_the_standard_machine() => Check.Small
        .Machine("entries: 6, direct-inputs: 2", "entries: 6, direct-inputs: 2, channel: [|breakers/1:3|]")
        .Says("CFG2003 there is no standard fit `breakers`");

    [Theory]
    [InlineData("controller")]
    [InlineData("torque-off")]
    public void The_safety_controller_and_what_drops_torque_are_fits_of_the_standard_machine(string key) => Check.Small
        .Machine(
            "entries: 6, direct-inputs: 2",
            $"entries: 6, direct-inputs: 2, safety: {{inputs: 2, outputs: 2, test-pulses: true, {key}: [|nothing|]}}")
        .Says("CFG2003 there is no standard fit `nothing`");

    [Fact]
    public void What_feeds_a_standard_fit_is_a_fit_of_the_machine() => Check.Small
        .Machine("purpose: Stops the filler, wiring: direct", "purpose: Stops the filler, fed-by: [[|nothing|]], wiring: direct")
        .Says("CFG2003 there is no fit `nothing`");

    [Fact]
    public void What_feeds_a_fit_of_an_option_is_another_of_its_fits() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "device: eye", "device: eye\n    fed-by: [[|guard|]]")
        .Says("CFG2003 there is no fit `guard`");
}
