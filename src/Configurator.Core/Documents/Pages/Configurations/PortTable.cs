using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>How to set every port of every master and hub that is fitted, the unused ones too.</summary>
internal static class PortTable
{
    public static Table Of(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "port-settings",
            words.PortSettings,
            [
                new(words.Port),
                new(words.Designation),
                new(words.PinFour),
                new(words.PinTwo),
                new(words.Device),
                new("VendorID"),
                new("DeviceID"),
                new(words.InspectionLevel),
                new(words.PortCycle),
                new(words.BackupRestore),
                new(words.SubstituteValue),
            ],
            [
                .. PortMapDocument
                    .Carriers(context.Fitted)
                    .SelectMany(carrier =>
                        PortSetting
                            .Of(context.Fitted, carrier.Name, carrier.Device.Ports!)
                            .Select(setting => RowOf(context, carrier, setting))
                    ),
            ]
        );
    }

    private static Row RowOf(ConfigurationContext context, Carrier carrier, PortSetting setting)
    {
        var words = context.Words;
        var user = setting.Instance ?? setting.PinTwoGuest;
        return new(
            [
                context.Names.Port(context.Engineered.Machine, new Home(carrier.Name, setting.Port)),
                Cell.Of(
                    new[] { setting.Instance, setting.PinTwoGuest }
                        .OfType<FitInstance>()
                        .Select(instance => new Link(context.Names.Of(instance)))
                ),
                words.Of(setting.Mode),
                words.Of(setting.PinTwo),
                user is null ? "" : context.Links.Device(user.Device),
                setting.Identity is { } vendor ? Number(vendor.Vendor, "X4") : "",
                setting.Identity is { } device ? Number(device.Device, "X6") : "",
                setting.Inspection is { } inspection ? words.Of(inspection) : "",
                setting.Cycle is { } cycle
                    ? FormattableString.Invariant($"{new Measure(cycle.Milliseconds, "ms")} (0x{cycle.Octet:X2})")
                    : "",
                setting.Backup is { } backup ? words.Of(backup) : "",
                Substitute(words, setting),
            ],
            user is null ? "spare" : ""
        );
    }

    private static string Number(int number, string format) =>
        FormattableString.Invariant(
            $"{number} (0x{number.ToString(format, System.Globalization.CultureInfo.InvariantCulture)})"
        );

    private static string Substitute(SiteWords words, PortSetting setting) =>
        string.Join(
            "; ",
            new[] { setting.HasInputs ? words.InputsZero : "", setting.HasOutputs ? words.OutputsOff : "" }.Where(
                part => part.Length > 0
            )
        );
}
