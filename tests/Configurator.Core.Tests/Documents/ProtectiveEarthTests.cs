using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>Colours of the cores of the demonstration's library.</summary>
public class ProtectiveEarthTests
{
    // Source: IEC 60204-1 13.2.2 and IEC 60445 (from memory): green-yellow is for protective earth alone.
    [Fact]
    public void Green_yellow_carries_protective_earth_and_nothing_else_does()
    {
        var cores = DemoCatalogue.Whole.Devices.Values.SelectMany(device => device.Leads?.Cores ?? []).ToList();
        Assert.Contains(cores, core => core.IsProtectiveEarth);
        Assert.All(cores, core => Assert.Equal(core.Core == LeadCore.GreenYellow, core.IsProtectiveEarth));
        Assert.All(cores.Where(core => core.IsProtectiveEarth), core => Assert.Equal(CoreTarget.Earth, core.LeadsTo));
    }

    // No stock cable brings protective earth to a field device.
    [Fact]
    public void No_stock_cable_has_a_green_yellow_core() => Assert.All(
        DemoCatalogue.Whole.Devices.Values,
        device => Assert.DoesNotContain(LeadCore.GreenYellow, device.Cordset?.Cores ?? []));
}
