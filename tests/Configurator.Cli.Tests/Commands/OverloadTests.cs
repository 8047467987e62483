using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

/// <summary>A copy of the demonstration whose trunk is too thin: the place, the shortfall, the configuration and a mend
/// that works are named.</summary>
public sealed class OverloadTests : IDisposable
{
    private const string Cable = "options/devices/trunk-power-cable.yaml";

    private readonly TempFolder _demo = new();

    public OverloadTests() => Repository.CopyDemo(_demo.Root);

    public void Dispose() => _demo.Dispose();

    [Fact]
    public void A_trunk_that_is_too_thin_is_told_with_a_mend_that_works()
    {
        TakeConductorsOf("2.5 mm2", "1 mm2");

        var thin = Tool.Run("check", "--catalogue", _demo.Root);

        Assert.Equal(ExitCodes.Findings, thin.ExitCode);
        Assert.Contains(
            "error CFG4401: `actuators` reaches master `outfeed` with 19.68 V; the limit is 20.4 V\n", thin.Output, StringComparison.Ordinal);
        Assert.Contains(
            "finding `power.master-voltage/outfeed/actuators` in configuration `crumble-layers`\n", thin.Output, StringComparison.Ordinal);
        Assert.Contains("take a trunk cable of 2.5 mm2: then 21.81 V at the lowest", thin.Output, StringComparison.Ordinal);

        TakeConductorsOf("1 mm2", "2.5 mm2");
        Assert.Equal(ExitCodes.Fine, Tool.Run("check", "--catalogue", _demo.Root).ExitCode);
    }

    private void TakeConductorsOf(string was, string now)
    {
        var text = File.ReadAllText(_demo[Cable]);
        Assert.Contains($"conductor: {was}", text, StringComparison.Ordinal);
        File.WriteAllText(_demo[Cable], text.Replace($"conductor: {was}", $"conductor: {now}", StringComparison.Ordinal));
    }
}
