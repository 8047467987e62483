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
            [.. Group(Mounted(context).Concat(Splitters(context)).Concat(Caps(context)))],
            [
                .. Group(
                    cables
                        .Where(cable => cable.Cordset is not null)
                        .Select(cable => (cable.Cordset!, cable.Run.Stock, cable.Name))
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

    private static IEnumerable<(Device Device, Quantity? Length, string Name)> Mounted(ConfigurationContext context) =>
        context
            .Fitted.Masters.Select(master => (master.Device, (Quantity?)null, context.Names.Of(master)))
            .Concat(
                context.Fitted.Fitted.Select(instance => (instance.Device, (Quantity?)null, context.Names.Of(instance)))
            );

    /// <summary>One at each port where two plain signals share it.</summary>
    private static IEnumerable<(Device Device, Quantity? Length, string Name)> Splitters(
        ConfigurationContext context
    ) =>
        context.Fitted.Machine.Control.Splitter is { } splitter
            ? context
                .Fitted.Cabled.Where(pair => pair.Home is { IsPinTwo: true })
                .Select(pair => (splitter, (Quantity?)null, context.Names.SplitterOf(pair.Instance)))
            : [];

    /// <summary>One for each port that nothing is plugged into, and for the outlets at the end of the trunk.</summary>
    private static IEnumerable<(Device Device, Quantity? Length, string Name)> Caps(ConfigurationContext context) =>
        context.Fitted.Machine.Sanitation?.Cap is { } cap
            ? context
                .Fitted.OpenPorts.Select(port => context.Names.Port(context.Fitted.Machine, port))
                .Concat(context.Fitted.LastMaster is { } last ? context.Names.OutletsOf(last) : [])
                .Select(name => (cap, (Quantity?)null, name))
            : [];

    private static IEnumerable<PartLine> Group(IEnumerable<(Device Device, Quantity? Length, string Name)> parts) =>
        parts
            .GroupBy(part => (part.Device.Id.Value, part.Length?.InBase))
            .OrderBy(line => line.Key.Value)
            .ThenBy(line => line.Key.InBase)
            .Select(line => new PartLine(
                line.First().Device,
                line.First().Length,
                line.Count(),
                [.. line.Select(part => part.Name).Order(StringComparer.Ordinal)]
            ));

    private static string Type(Leads leads) =>
        $"{leads.Conductor.InBase.ToString(3).PadLeft(8, '0')} {string.Join(' ', leads.Cores.Select(core => core.Core))} {leads.Jacket} {leads.IsShielded}";
}
