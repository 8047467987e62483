using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Parts;

/// <summary>Everything that one machine of a configuration is made of as far as definitions know: devices, stock
/// cables, cable from the drum.</summary>
internal sealed record PartsList(
    ImmutableArray<PartLine> Devices,
    ImmutableArray<PartLine> Cables,
    ImmutableArray<DrumLine> Drums
)
{
    public IEnumerable<PartLine> Lines => Devices.Concat(Cables);

    public static PartsList Of(ConfigurationContext context)
    {
        var cables = CableList.Of(context);
        return new(
            [.. Group(context, Mounted(context).Concat(Splitters(context)).Concat(Caps(context)))],
            [
                .. Group(
                    context,
                    cables
                        .Where(cable => cable.Cordset is not null)
                        .Select(cable => new Part(cable.Cordset!, cable.Run.Stock, cable.Name, cable.To.Station))
                ),
            ],
            [
                .. cables
                    .Where(cable => cable.Leads is not null && cable.Cordset is null)
                    .GroupBy(cable => Type(cable.Leads!), StringComparer.Ordinal)
                    .OrderBy(type => type.Key, StringComparer.Ordinal)
                    .Select(type => new DrumLine(
                        type.First().Leads!,
                        new(type.Sum(cable => cable.Cut?.Value ?? 0)),
                        [.. type.Select(cable => cable.Name).Order(StringComparer.Ordinal)]
                    )),
            ]
        );
    }

    private static IEnumerable<Part> Mounted(ConfigurationContext context) =>
        context
            .Fitted.Masters.Select(master => new Part(master.Device, null, context.Names.Of(master), master.Station))
            .Concat(
                context.Fitted.Fitted.Select(instance => new Part(
                    instance.Device,
                    null,
                    context.Names.Of(instance),
                    instance.Station
                ))
            );

    /// <summary>One at each port where two plain signals share it.</summary>
    private static IEnumerable<Part> Splitters(ConfigurationContext context) =>
        context.Fitted.Machine.Control.Splitter is { } splitter
            ? context
                .Fitted.Cabled.Where(pair => pair.Home is { IsPinTwo: true })
                .Select(pair => new Part(
                    splitter,
                    null,
                    context.Names.SplitterOf(pair.Instance),
                    pair.Instance.Station
                ))
            : [];

    /// <summary>One for each port that nothing is plugged into, and for the outlets at the end of the trunk.</summary>
    private static IEnumerable<Part> Caps(ConfigurationContext context) =>
        context.Fitted.Machine.Sanitation?.Cap is { } cap
            ? Capped(context).Select(place => new Part(cap, null, place.Name, place.Station))
            : [];

    /// <summary>What stays open: a port's name and where it is.</summary>
    public static IEnumerable<(Station Station, string Name)> Capped(ConfigurationContext context) =>
        context
            .Fitted.OpenPorts.Select(port =>
                (context.Fitted.StationOf(port.Master!.Value)!, context.Names.Port(context.Fitted.Machine, port))
            )
            .Concat(
                context.Fitted.LastMaster is { } last
                    ? context.Names.OutletsOf(last).Select(name => (last.Station, name))
                    : []
            );

    private static IEnumerable<PartLine> Group(ConfigurationContext context, IEnumerable<Part> parts) =>
        parts
            .GroupBy(part => (part.Device.Id.Value, part.Length?.InBase))
            .OrderBy(line => line.Key.Value)
            .ThenBy(line => line.Key.InBase)
            .Select(line => new PartLine(
                line.First().Device,
                line.First().Length,
                line.Count(),
                [.. line.Select(part => part.Name).Order(StringComparer.Ordinal)],
                [
                    .. line.Select(part => context.Names.Of(part.Station))
                        .Distinct(StringComparer.Ordinal)
                        .Order(StringComparer.Ordinal),
                ]
            ));

    private static string Type(Leads leads) =>
        $"{leads.Conductor.InBase.ToString(3).PadLeft(8, '0')} {string.Join(' ', leads.Cores.Select(core => $"{core.Core} {core.Conductor}"))} {leads.Jacket} {leads.IsShielded}";

    /// <param name="Station">Where it is mounted, or where its far end is.</param>
    private sealed record Part(Device Device, Quantity? Length, string Name, Station Station);
}
