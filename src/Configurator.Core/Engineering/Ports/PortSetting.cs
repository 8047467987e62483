using System.Collections.Immutable;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Ports;

/// <summary>How a port of a master or hub is to be set.</summary>
/// <param name="Instance">What is plugged in and uses pin 4; null for a port that nothing uses.</param>
/// <param name="PinTwoGuest">A second plain signal of another device at pin 2; null mostly.</param>
internal sealed record PortSetting(
    int Port,
    PortClass Class,
    FitInstance? Instance,
    FitInstance? PinTwoGuest,
    PortMode Mode,
    PinTwoMode PinTwo
)
{
    private IoLinkData? Data => Mode == PortMode.IoLink ? Instance!.Device.IoLink : null;

    public DeviceIdentity? Identity => Data?.Identity?.Value;

    /// <summary>With its identity known, the master refuses a device of another type.</summary>
    public Inspection? Inspection =>
        Data is null ? null
        : Identity is null ? Ports.Inspection.NoCheck
        : Ports.Inspection.SameType;

    /// <summary>Milliseconds, and the octet that states them; null where no octet can.</summary>
    public (Rational Milliseconds, byte Octet)? Cycle =>
        Data is { } data && CycleTime.Encode(data.Cycle.InBase) is { } octet && CycleTime.Decode(octet) is { } ms
            ? (ms, octet)
            : null;

    /// <summary>
    /// One owner of each parameter: where recipes set a device, the controller writes all of its settings at every
    /// start
    /// of the port, and a copy in the master would put old ones back. Without a check of the device no copy is safe.
    /// </summary>
    /// <remarks>Source: common practice, no source.</remarks>
    public Backup? Backup =>
        Data is null ? null
        : !Instance!.Fit.Settings.IsEmpty ? Ports.Backup.ControllerWrites
        : Identity is null ? Ports.Backup.OffUntilChecked
        : Ports.Backup.BackupAndRestore;

    public bool HasInputs => Mode == PortMode.DigitalInput || Data is { InputOctets: > 0 };

    public bool HasOutputs => Data is { OutputOctets: > 0 };

    /// <summary>Every port of a master or hub that is fitted, in order.</summary>
    public static ImmutableArray<PortSetting> Of(FittedMachine fitted, MasterName carrier, PortSet ports)
    {
        var plugged = fitted
            .PluggedInto(carrier)
            .OrderBy(pair => pair.Instance.Key)
            .ToLookup(pair => (pair.Home.Port, pair.Home.IsPinTwo), pair => pair.Instance);
        return [.. ports.Numbers.Select(Setting)];

        PortSetting Setting(int port)
        {
            var portClass = ports.ClassOf(port)!.Value;
            var instance = plugged[(port, false)].FirstOrDefault();
            var guest = plugged[(port, true)].FirstOrDefault();
            return new(port, portClass, instance, guest, ModeOf(instance), PinTwoOf(portClass, instance, guest));
        }
    }

    private static PortMode ModeOf(FitInstance? instance) =>
        instance is null ? PortMode.Off
        : instance.Device.Connection == ConnectionKind.IoLink ? PortMode.IoLink
        : PortMode.DigitalInput;

    private static PinTwoMode PinTwoOf(PortClass portClass, FitInstance? instance, FitInstance? guest) =>
        portClass switch
        {
            PortClass.Switching => PinTwoMode.NotThere,
            PortClass.B => PinTwoMode.ExtraSupply,
            _ => guest is not null || instance?.Device.PinTwo == PinTwoUse.Signal
                ? PinTwoMode.DigitalInput
                : PinTwoMode.Off,
        };
}

internal enum PortMode
{
    IoLink,
    DigitalInput,
    Off,
}

internal enum PinTwoMode
{
    Off,
    DigitalInput,
    ExtraSupply,

    /// <summary>Hub ports for plain signals: the hub's own affair.</summary>
    NotThere,
}

/// <summary>What the master holds against the device that it finds.</summary>
internal enum Inspection
{
    NoCheck,
    SameType,
}

/// <summary>Whether the master keeps a copy of the device's parameters.</summary>
internal enum Backup
{
    BackupAndRestore,
    ControllerWrites,
    OffUntilChecked,
}
