using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What each pin of an M12 A-coded sensor plug carries. A device that is wired into the box has no such pins:
/// its own data sheet says what each core carries.</summary>
/// <remarks>Source: IEC 60947-5-2; IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.5.</remarks>
internal static class PinSignals
{
    public const string NotUsed = "not used";

    public static bool IsFor(Device device) => device.Connection is ConnectionKind.IoLink or ConnectionKind.Switching;

    /// <summary>Where a pin leads on to inside the box, of a device wired there.</summary>
    public static CoreTarget TargetOf(Device device, int pin) =>
        (pin, IsFor(device)) switch
        {
            (1, true) => CoreTarget.Supply,
            (3, true) => CoreTarget.ZeroVolts,
            (4, true) => CoreTarget.FastInput,
            (2, true) when device.PinTwo == PinTwoUse.Signal => CoreTarget.Input,
            _ => CoreTarget.Unsaid,
        };

    public static string Of(Device device, int pin) =>
        (pin, device.PinTwo) switch
        {
            (1, _) => "L+ 24 V",
            (2, PinTwoUse.Signal) => "second signal",
            (2, PinTwoUse.Supply) => "2L+ 24 V",
            (2, _) => NotUsed,
            (3, _) => "L- 0 V",
            (4, _) when device.Connection == ConnectionKind.IoLink => "signal, C/Q",
            (4, _) => "signal",
            (5, PinTwoUse.Supply) => "2L- 0 V",
            _ => NotUsed,
        };
}
