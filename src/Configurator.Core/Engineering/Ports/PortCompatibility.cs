using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Which device may meet which port.</summary>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.5, and public pin
/// tables.</remarks>
internal static class PortCompatibility
{
    /// <summary>Why the device must not be plugged in there; null where it may.</summary>
    public static string? Objection(Device device, PortClass port, PinTwoOffer pinTwo) =>
        (device.Connection, device.PortClass, port) switch
        {
            (ConnectionKind.Wired or ConnectionKind.None, _, _) => "it has no connection for a port",
            (ConnectionKind.Switching, _, PortClass.Switching) => null,
            (ConnectionKind.IoLink, _, PortClass.Switching) => "the port takes plain switching signals only",
            (_, PortClass.B, PortClass.A) => "a class A port has no extra supply for a class B device",
            (_, PortClass.B, PortClass.B) => null,
            (_, _, PortClass.B) when device.PinTwo == PinTwoUse.Signal =>
                "pin 2 of a class B port carries 24 V, and the device has a signal there",
            (_, _, PortClass.A) when device.PinTwo == PinTwoUse.Signal && pinTwo == PinTwoOffer.None =>
                "the port does nothing with the signal on pin 2",
            _ => null,
        };
}
