using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

/// <summary>A copy of the demonstration whose trunk is too thin: the place, the shortfall, the configuration and a mend
/// that works are named.</summary>
public sealed class OverloadTests : IDisposable
{
    private const string Trunk = "options/devices/trunk-power-cable.yaml";
    private const string Cordset = "options/devices/cordset-m12-5.yaml";

    private readonly TempFolder _demo = new();

    public OverloadTests() => Repository.CopyDemo(_demo.Root);

    public void Dispose() => _demo.Dispose();

    [Fact]
    public void A_trunk_that_is_too_thin_is_told_with_a_mend_that_works()
    {
        TakeConductorsOf(Trunk, "2.5 mm2", "1 mm2");

        var thin = Tool.Run("check", "--catalogue", _demo.Root);

        Assert.Equal(ExitCodes.Findings, thin.ExitCode);
        Assert.Contains(
            "error CFG4401: `actuators` reaches master `outfeed` with 19.68 V; the limit is 20.4 V\n", thin.Output, StringComparison.Ordinal);
        Assert.Contains(
            "finding `power.master-voltage/outfeed/actuators` in configuration `crumble-layers`\n", thin.Output, StringComparison.Ordinal);
        Assert.Contains("the stretch from the box to `filling` loses most, ", thin.Output, StringComparison.Ordinal);
        Assert.Contains("take a trunk cable of 2.5 mm2: then 21.81 V at the lowest", thin.Output, StringComparison.Ordinal);

        TakeConductorsOf(Trunk, "1 mm2", "2.5 mm2");
        Assert.Equal(ExitCodes.Fine, Tool.Run("check", "--catalogue", _demo.Root).ExitCode);
    }

    [Fact]
    public void A_cable_that_is_too_thin_for_its_device_is_told_with_a_mend_that_works()
    {
        Replace("machines/pantry-four/machine.yaml", "lowest: 23.6 V", "lowest: 23 V");
        TakeConductorsOf(Cordset, "0.34 mm2", "0.25 mm2");

        var thin = Tool.Run("check", "--catalogue", _demo.Root);

        Assert.Equal(ExitCodes.Findings, thin.ExitCode);
        Assert.Contains(
            "error CFG4402: `actuators` reaches `toppings/topping-feeder/2` at master `sealing` with 20.38 V; the limit is 20.4 V\n",
            thin.Output,
            StringComparison.Ordinal);
        Assert.Contains(
            "take a cordset for `toppings/topping-feeder/2` with cores of 0.34 mm2: then 20.57 V there", thin.Output, StringComparison.Ordinal);

        TakeConductorsOf(Cordset, "0.25 mm2", "0.34 mm2");
        Assert.Equal(ExitCodes.Fine, Tool.Run("check", "--catalogue", _demo.Root).ExitCode);
    }

    private void TakeConductorsOf(string cable, string was, string now) => Replace(cable, $"conductor: {was}", $"conductor: {now}");

    private void Replace(string path, string was, string now)
    {
        var text = File.ReadAllText(_demo[path]);
        Assert.Contains(was, text, StringComparison.Ordinal);
        File.WriteAllText(_demo[path], text.Replace(was, now, StringComparison.Ordinal));
    }
}
