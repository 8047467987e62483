using Configurator.Core.Engineering.Loads;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>What an option adds to a machine, by hand from the small catalogue.</summary>
public class LoadTests
{
    [Theory]
    [InlineData("cup-check", 1, "ports-a 1, sensor-supply 40 mA")]
    [InlineData("counter", 1, "ports-a 1, ports-hub 1, sensor-supply 50 mA")]
    [InlineData("heads", 1, "air 18 l/min, extra-supply 800 mA, ports-b 1, sensor-supply 60 mA")]
    [InlineData("heads", 2, "air 36 l/min, extra-supply 1600 mA, ports-b 2, sensor-supply 120 mA")]
    [InlineData("agitator", 1, "box-heat 12 W, rail 45 mm")]
    [InlineData("film", 1, "")]
    public void An_option_adds_what_its_fits_draw_and_take(string option, int quantity, string loads)
    {
        var machine = Check.Small.TheMachine;
        var added = OptionLoads.Of(machine, machine.Options[new(option)], quantity)
            .Where(load => load.Value != 0).OrderBy(load => load.Key.Id, StringComparer.Ordinal);
        Assert.Equal(loads, string.Join(", ", added.Select(load => $"{load.Key.Id} {load.Key.Print(load.Value)}")));
    }
}
