using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>One page a device: its data, its parameters, where it is used.</summary>
internal static class DevicePages
{
    public static Page Compose(DocumentContext context, Device device)
    {
        var path = PagePaths.Of(device.Id.Value);
        var words = context.Words;
        var links = context.On(path);
        return new(path, "device", $"{context.In(device.Title)} ({words.Device})", words)
        {
            Heading = context.In(device.Title),
            Crumbs = [links.Catalogue, links.To(PagePaths.Devices, words.Devices)],
            Sections =
            [
                new("data", words.Data, [Facts(context, links, device)]),
                .. device.Parameters.IsEmpty
                    ? ImmutableArray<Section>.Empty
                    : [new Section("parameters", words.Parameters, [Parameters(context, device)])],
                .. ProcessDataTable.Sections(context, device),
                new("used", words.WhereUsed, [Uses(context, links, device)]),
            ],
        };
    }

    private static Facts Facts(DocumentContext context, Links links, Device device)
    {
        var words = context.Words;
        ImmutableArray<Fact> all =
        [
            Fact.Of(words.Type, WordLists.Plain(device.Kind)),
            Fact.Of(
                words.PortClass,
                device.Connection is ConnectionKind.IoLink or ConnectionKind.Switching
                    ? WordLists.Of(device.PortClass)
                    : ""
            ),
            Fact.Of(words.Mode, device.Connection == ConnectionKind.None ? "" : WordLists.Plain(device.Connection)),
            Fact.Of(words.Plug, device.Plug == "none" ? "" : device.Plug),
            Fact.Of(
                words.PinTwo,
                device.Connection is ConnectionKind.IoLink or ConnectionKind.Switching
                    ? WordLists.Plain(device.PinTwo)
                    : ""
            ),
            Fact.Of(words.Current, context.Print(device.Current)),
            Fact.Of("2L+", context.Print(device.ExtraCurrent)),
            Fact.Of(
                words.ProcessData,
                device.IoLink is { } data
                    ? FormattableString.Invariant($"{data.InputOctets} / {data.OutputOctets} octets")
                    : ""
            ),
            Fact.Of(
                words.Cycle,
                device.IoLink is { } cycle
                    ? $"{context.Print(cycle.Cycle)}, {cycle.Rate.ToString().ToUpperInvariant()}"
                    : ""
            ),
            Fact.Of(
                words.Identity,
                device.IoLink?.Identity is { Value: var identity }
                    ? FormattableString.Invariant($"VendorID {identity.Vendor}, DeviceID {identity.Device}")
                    : ""
            ),
            Fact.Of("IP", string.Join(", ", device.Ingress)),
            Fact.Of("Material", string.Join(", ", device.Materials)),
            Fact.Of(
                words.Length,
                device.Cordset is { } cordset ? string.Join(", ", cordset.Lengths.Select(context.Print)) : ""
            ),
            Fact.Of(words.Price, context.Print(device.Price)),
            new(
                words.Alternates,
                [
                    .. device
                        .Alternates.Select(id => context.Catalogue.Devices.GetValueOrDefault(id))
                        .OfType<Device>()
                        .Select(links.Device),
                ]
            ),
        ];
        return new(all);
    }

    private static Table Parameters(DocumentContext context, Device device)
    {
        var words = context.Words;
        return new(
            "parameters",
            words.Parameters,
            [
                new(words.Parameter),
                new(words.Title),
                new("Index", IsNumber: true),
                new("Subindex", IsNumber: true),
                new(words.Type),
                new(words.Range),
            ],
            [
                .. device.Parameters.Select(parameter =>
                    Row.Of(
                        parameter.Name.Value,
                        context.In(parameter.Title),
                        DocumentContext.Print(parameter.Index),
                        DocumentContext.Print(parameter.Subindex),
                        WordLists.Plain(parameter.Type),
                        Range(parameter)
                    )
                ),
            ]
        );
    }

    private static string Range(Parameter parameter) =>
        parameter.Words.IsEmpty
            ? $"{parameter.From}–{parameter.To}{(parameter.Unit is { } unit ? " " + UnitPrinter.Symbol(unit) : "")}"
            : string.Join(
                ", ",
                parameter.Words.Select(word => FormattableString.Invariant($"{word.Key} = {word.Value}"))
            );

    private static Table Uses(DocumentContext context, Links links, Device device)
    {
        var words = context.Words;
        var uses = context.Catalogue.Machines.Values.SelectMany(machine =>
            machine
                .Instances.Where(instance => instance.Device.Id.Value == device.Id.Value)
                .Select(instance =>
                    Row.Of(
                        context.Designations.Of(instance),
                        links.Machine(machine),
                        links.Source(instance),
                        context.In(instance.Station.Title),
                        context.In(instance.Fit.Purpose)
                    )
                )
        );
        var masters = context.Catalogue.Machines.Values.SelectMany(machine =>
            machine
                .Control.Masters.Where(master => master.Device.Id.Value == device.Id.Value)
                .Select(master =>
                    Row.Of(
                        context.Designations.Of(master),
                        links.Machine(machine),
                        words.Master,
                        context.In(master.Station.Title),
                        ""
                    )
                )
        );
        return new(
            "uses",
            words.WhereUsed,
            [new(words.Designation), new(words.Machine), new(words.Option), new(words.Station), new(words.Purpose)],
            [.. uses, .. masters]
        );
    }
}
