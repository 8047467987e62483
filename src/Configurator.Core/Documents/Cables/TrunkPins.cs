using Configurator.Core.Model;

namespace Configurator.Core.Documents.Cables;

/// <summary>What the pins of trunk plugs carry: M12 L-coded for power, M12 D-coded for the network.</summary>
/// <remarks>Source: IEC 61076-2-111 with industrial Ethernet cabling guides for L (from memory); IEC 61918 and public
/// pin tables for D (corroborated).</remarks>
internal static class TrunkPins
{
    /// <summary>Of a power plug: the pin that feeds a circuit, and the one that leads back.</summary>
    public static (int Live, int Back) PinsOf(CircuitUse use) => use == CircuitUse.SensorSupply ? (1, 3) : (4, 2);

    public static string Of(bool isPower, int pin) =>
        (isPower, pin) switch
        {
            (true, 1) => "+24 V sensors, L+",
            (true, 2) => "0 V actuators, 2M",
            (true, 3) => "0 V sensors, M",
            (true, 4) => "+24 V actuators, 2L+",
            (true, _) => "functional earth",
            (false, 1) => "TD+",
            (false, 2) => "RD+",
            (false, 3) => "TD-",
            (false, 4) => "RD-",
            _ => "not used",
        };
}
