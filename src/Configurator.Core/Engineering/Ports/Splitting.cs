using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Two plain signals of one option at one class A port: at pin 4 and pin 2, through a splitter.</summary>
/// <remarks>Source: common practice, no source; pin 2 of a class A port may be an input (IEC 61131-9).</remarks>
public static class Splitting
{
    /// <summary>The machine has a splitter in stock, and these class A ports read pin 2.</summary>
    private static bool IsOffered(Machine machine, PortSet ports) =>
        machine.Control.Splitter is not null && ports.PinTwo is PinTwoOffer.Input or PinTwoOffer.Either;

    /// <summary>A plain signal that leaves room for another one like it at a class A port.</summary>
    public static bool CanPair(Machine machine, PortSet ports, Device device) =>
        IsOffered(machine, ports) && IsPlain(device) && CurrentChecks.CanFeedTwo(ports, device);

    /// <summary>Switches pin 4 and leaves pin 2 alone, so that another one can use it.</summary>
    private static bool IsPlain(Device device) =>
        device is { Connection: ConnectionKind.Switching, PinTwo: PinTwoUse.Unused, PortClass: not PortClass.B };

    /// <summary>Why a device may not be at pin 2 of that port; null where it may.</summary>
    internal static string? Objection(Machine machine, Device device, PortClass offered, PortSet ports) =>
        !IsPlain(device) ? "only a plain signal that leaves pin 2 alone goes through a splitter"
        : offered != PortClass.A || ports.PinTwo is not (PinTwoOffer.Input or PinTwoOffer.Either)
            ? "the port does nothing with a signal on pin 2"
        : machine.Control.Splitter is null ? "the machine names no `splitter`"
        : null;

    /// <summary>So many of these may share a port.</summary>
    internal static int Allowed(Machine machine, PortSet ports, IReadOnlyCollection<FitInstance> sharing) =>
        IsOffered(machine, ports)
        && sharing.All(instance => IsPlain(instance.Device))
        && sharing.Select(instance => instance.Key.Source).Distinct(StringComparer.Ordinal).Count() == 1
            ? 2
            : 1;
}
