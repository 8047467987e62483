using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Cables;

/// <summary>Every cable of a configuration in the order in which the machine is cabled: trunk first, then master by
/// master and port by port, then what goes straight to the box.</summary>
internal static class CableList
{
    public static ImmutableArray<CableEntry> Of(ConfigurationContext context)
    {
        var carriers = PortMapDocument.Carriers(context.Fitted).Select(carrier => carrier.Name).ToList();
        return
        [
            .. context
                .Engineered.Report.Cables.OrderBy(cable =>
                    cable switch
                    {
                        TrunkCable => -1,
                        DeviceCable { Home.Master: { } master } => carriers.IndexOf(master),
                        _ => int.MaxValue,
                    }
                )
                .ThenBy(cable => cable is DeviceCable device ? device.Home.Port : 0)
                .ThenBy(cable => cable is DeviceCable { Home.IsPinTwo: true })
                .ThenBy(cable => cable is NetworkCable)
                .Select(cable =>
                    cable switch
                    {
                        TrunkCable trunk => Trunk(context, trunk),
                        NetworkCable network => Network(context, network),
                        _ => Device(context, (DeviceCable)cable),
                    }
                ),
        ];
    }

    /// <summary>From a socket in the wall of the box.</summary>
    private static CableEntry Network(ConfigurationContext context, NetworkCable cable)
    {
        var (names, cordset) = (context.Names, cable.Cordset?.Cordset);
        return new(
            names.NetworkCableOf(cable.Instance),
            new(
                cable.From,
                names.NetworkSocketOf(cable.Instance),
                PlugOf(cable.Cordset?.FarPlug, isSocket: false, cordset, cordset?.FarEnd)
            ),
            new(
                cable.To,
                names.NetworkPortOf(cable.Instance),
                PlugOf(cable.Cordset?.Plug, isSocket: false, cordset, cordset?.DeviceEnd)
            ),
            cable,
            Moulded(cable.Cordset, pin => TrunkPins.Of(isPower: false, pin))
        );
    }

    /// <summary>Power flows from sleeves to pins, so that no pin is live when unplugged; network ports have sleeves on
    /// both sides.</summary>
    /// <remarks>Source: IEC 61076-2-101 and -111; which side has pins is common practice, no source.</remarks>
    private static CableEntry Trunk(ConfigurationContext context, TrunkCable cable)
    {
        var names = context.Names;
        var from = cable.Previous is { } previous
            ? names.TrunkPort(previous, cable.IsPower, isInlet: false)
            : names.TrunkSocket(cable.IsPower);
        var cordset = cable.Cordset?.Cordset;
        return new(
            names.TrunkCableOf(cable.Next, cable.IsPower),
            new(cable.From, from, PlugOf(cable.Cordset?.FarPlug, isSocket: false, cordset, cordset?.FarEnd)),
            new(
                cable.To,
                names.TrunkPort(cable.Next, cable.IsPower, isInlet: true),
                PlugOf(cable.Cordset?.Plug, isSocket: cable.IsPower, cordset, cordset?.DeviceEnd)
            ),
            cable,
            Moulded(cable.Cordset, pin => TrunkPins.Of(cable.IsPower, pin))
        );
    }

    private static CableEntry Device(ConfigurationContext context, DeviceCable cable)
    {
        var (names, device, cordset) = (context.Names, cable.Instance.Device, cable.Cordset?.Cordset);
        var from = cable.Home.IsDirect
            ? names.TerminalsOf(cable.Instance)
            : names.Port(context.Engineered.Machine, cable.Home);
        return new(
            names.CableOf(cable.Instance),
            new(
                cable.From,
                from,
                cable.Home.IsDirect ? null : PlugOf(cable.Cordset?.FarPlug, isSocket: false, cordset, cordset?.FarEnd)
            ),
            new(
                cable.To,
                names.Of(cable.Instance),
                PlugOf(cable.Cordset?.Plug, isSocket: true, cordset, cordset?.DeviceEnd)
            ),
            cable,
            cable.Cordset is null
                ? Hand(from, device)
                :
                [
                    .. Moulded(cable.Cordset, pin => Signal(context, device, pin), cable.Home.IsDirect ? from : null)
                        .Select(core => core with { Target = PinSignals.TargetOf(device, core.Number) }),
                ]
        );
    }

    private static string Signal(ConfigurationContext context, Device device, int pin) =>
        PinSignals.IsFor(device) ? PinSignals.Of(device, pin) : context.Words.AsDataSheet;

    private static CablePlug? PlugOf(string? kind, bool isSocket, Cordset? cordset, PlugForm? form) =>
        kind is null or "none" or "terminals" ? null : new(kind, isSocket, form ?? PlugForm.Straight, cordset?.Torque);

    /// <summary>Cores of a stock cable, in pin order.</summary>
    /// <param name="terminals">Where its open end is wired to; null where both ends have plugs.</param>
    private static ImmutableArray<CableCore> Moulded(
        Device? cordset,
        Func<int, string> carries,
        string? terminals = null
    ) =>
        [
            .. (cordset?.Cordset?.Cores ?? []).Select(
                (colour, i) =>
                    new CableCore(
                        i + 1,
                        colour,
                        terminals is null ? Number(i + 1) : $"{terminals}:{Number(i + 1)}",
                        Number(i + 1),
                        carries(i + 1)
                    )
            ),
        ];

    private static ImmutableArray<CableCore> Hand(string terminals, Device device) =>
        [
            .. (device.Leads?.Cores ?? []).Select(
                (core, i) =>
                    new CableCore(i + 1, core.Core, $"{terminals}:{Number(i + 1)}", core.At, core.Carries)
                    {
                        Target = core.LeadsTo,
                        Conductor = core.Conductor,
                        FeederAt = core.FeederAt,
                        Nth = device.Leads!.Cores[..i].Count(before => before.LeadsTo == core.LeadsTo) + 1,
                    }
            ),
        ];

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
