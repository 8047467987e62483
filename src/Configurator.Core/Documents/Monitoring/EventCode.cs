using System.Collections.Immutable;

namespace Configurator.Core.Documents.Monitoring;

/// <summary>An event that devices or ports of this kind usually send, and what it says.</summary>
/// <param name="IsPort">Sent by the master's port; else by the device.</param>
/// <param name="Status">The device status that goes with it; null where the standard prefers none.</param>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Table D.1 and D.2; corroborated.
/// What a device really sends stands in its own description.</remarks>
internal sealed record EventCode(bool IsPort, int Code, int? Status, string English, string Spanish)
{
    public static ImmutableArray<EventCode> All { get; } =
    [
        new(true, 0x1800, null, "no device at the port", "ningún dispositivo en el puerto"),
        new(
            true,
            0x1801,
            null,
            "error while parameters are written at start-up",
            "error al escribir parámetros en el arranque"
        ),
        new(true, 0x1802, null, "wrong VendorID", "VendorID incorrecto"),
        new(true, 0x1803, null, "wrong DeviceID", "DeviceID incorrecto"),
        new(true, 0x1804, null, "short circuit at C/Q", "cortocircuito en C/Q"),
        new(true, 0x1806, null, "short circuit at L+", "cortocircuito en L+"),
        new(true, 0x1807, null, "overcurrent at L+", "sobrecorriente en L+"),
        new(true, 0x180A, null, "backup does not belong to this device", "la copia no pertenece a este dispositivo"),
        new(true, 0x180E, null, "extra supply missing or too low", "alimentación extra ausente o demasiado baja"),
        new(true, 0xFF26, null, "state of the port has changed", "ha cambiado el estado del puerto"),
        new(false, 0x1000, 4, "malfunction of unknown cause", "fallo de causa desconocida"),
        new(false, 0x4000, 4, "overtemperature or overload", "sobretemperatura o sobrecarga"),
        new(false, 0x4210, 2, "temperature above its range", "temperatura por encima de su rango"),
        new(false, 0x4220, 2, "temperature below its range", "temperatura por debajo de su rango"),
        new(false, 0x5000, 4, "hardware fault", "fallo de hardware"),
        new(false, 0x5100, 4, "fault of the power supply", "fallo de la alimentación"),
        new(false, 0x5111, 2, "supply voltage below its range", "tensión de alimentación por debajo de su rango"),
        new(false, 0x5112, 2, "fault of the extra supply (class B)", "fallo de la alimentación extra (clase B)"),
        new(false, 0x6320, 4, "parameter error", "error de parámetro"),
        new(false, 0x7700, 4, "wire break behind the device", "rotura de hilo tras el dispositivo"),
        new(false, 0x7710, 4, "short circuit", "cortocircuito"),
        new(false, 0x8C01, 3, "simulation is active", "simulación activa"),
        new(false, 0x8C10, 2, "process value above its range", "valor de proceso por encima de su rango"),
        new(false, 0x8C20, 4, "measuring range exceeded", "rango de medida excedido"),
        new(false, 0x8C30, 2, "process value below its range", "valor de proceso por debajo de su rango"),
        new(false, 0x8C40, 1, "cleaning is due", "toca limpiar"),
        new(false, 0x8C41, 1, "refill is due", "toca rellenar"),
        new(false, 0x8C42, 1, "wear parts are due", "toca cambiar piezas de desgaste"),
    ];
}
