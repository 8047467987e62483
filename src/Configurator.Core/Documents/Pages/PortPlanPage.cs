using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>The port plan of a machine: every master, every port, who lives there.</summary>
internal static class PortPlanPage
{
    public static Page Compose(DocumentContext context, Machine machine)
    {
        var path = PagePaths.PortPlan(machine.Id.Value);
        var words = context.Words;
        var links = context.On(path);
        return new(path, "port-plan", $"{words.PortPlan}: {context.In(machine.Title)}", words)
        {
            Heading = words.PortPlan,
            Crumbs = links.CrumbsTo(machine),
            Lead = words.PortPlanLead,
            Sections =
            [
                .. AllOrdersSection.Of(context, links, machine),
                .. machine.Control.Masters.Select(master => OfMaster(context, links, machine, master)),
                .. Hubs(machine).Select(hub => OfHub(context, links, machine, hub)),
                new("direct", words.DirectHomes, [Direct(context, links, machine)]),
                new(
                    "box",
                    words.BoxPlaces,
                    [new Paragraph(words.BoxPlacesLead), BoxPlaces.Of(context, links, machine)]
                ),
            ],
        };
    }

    private static Section OfMaster(DocumentContext context, Links links, Machine machine, Master master) =>
        new(
            $"master-{master.Name.Value}",
            $"{context.Designations.Of(master)} {master.Name.Value}",
            [
                new Facts([
                    new(context.Words.Device, [links.Device(master.Device)]),
                    Fact.Of(
                        context.Words.Location,
                        $"{context.Designations.Of(master.Station)}, {context.In(master.Station.Title)}"
                    ),
                    Fact.Of(context.Words.Master, master.IsExtension ? context.Words.Extension : context.Words.Base),
                    Fact.Of(context.Words.Fitted, Fitted(context, machine, master)),
                ]),
                Ports(context, links, machine, master.Name.Value, master.Ports),
            ]
        );

    private static Section OfHub(DocumentContext context, Links links, Machine machine, FitInstance hub) =>
        new(
            $"hub-{hub.Key.Fit}",
            $"{context.Designations.Of(hub)} {hub.Key.Fit}",
            [
                new Facts([
                    new(context.Words.Device, [links.Device(hub.Device)]),
                    new(context.Words.Option, [links.Source(hub)]),
                ]),
                Ports(context, links, machine, new(hub.Key.Fit.Value), hub.Device.Ports!),
            ]
        );

    private static IEnumerable<FitInstance> Hubs(Machine machine) =>
        machine.Instances.Where(instance =>
            instance is { Device: { Kind: DeviceKind.Hub, Ports: not null }, Key.Ordinal: 1 }
        );

    private static Table Ports(DocumentContext context, Links links, Machine machine, MasterName carrier, PortSet ports)
    {
        var words = context.Words;
        var homes = machine.Instances.ToLookup(instance => PortOf(machine.Plan.HomeOf(instance.Key)));
        return new(
            $"ports-{carrier}",
            $"{words.PortPlan}: {carrier}",
            [
                new(words.Port),
                new(words.PortClass),
                new(words.Designation),
                new(words.Device),
                new(words.Option),
                new(words.Station),
                new(words.PortUsed, IsNumber: true),
            ],
            [.. ports.Numbers.SelectMany(port => RowsFor(homes[new Home(carrier, port)], port))]
        );

        IEnumerable<Row> RowsFor(IEnumerable<FitInstance> living, int port)
        {
            Cell number = DocumentContext.Print(port);
            Cell portClass = WordLists.Of(ports.ClassOf(port)!.Value);
            Cell used = Used(context, machine, new(carrier, port));
            return living.Any()
                ? living
                    .OrderBy(instance => instance.Key)
                    .Select(instance =>
                        Row.Of(
                            number,
                            portClass,
                            context.Designations.Of(instance),
                            links.Device(instance.Device),
                            links.Source(instance),
                            context.In(instance.Station.Title),
                            used
                        )
                    )
                : [new Row([number, portClass, words.Spare, "", "", "", ""], "spare")];
        }
    }

    private static string Fitted(DocumentContext context, Machine machine, Master master) =>
        Report(context, machine)?.Extensions.GetValueOrDefault(master.Name.Value) is { } share
            ? context.Words.FittedIn(AllOrdersText.Percent(share), AllOrdersText.PercentByMix(share))
            : "";

    private static string Used(DocumentContext context, Machine machine, Home port) =>
        Report(context, machine)?.Ports.GetValueOrDefault(port) is { } share ? AllOrdersText.Percent(share) : "";

    private static AllOrdersReport? Report(DocumentContext context, Machine machine) =>
        context.Engineered.AllOrders.GetValueOrDefault(machine.Id.Value);

    /// <summary>Both signals of a splitter are at home on one port.</summary>
    private static Home? PortOf(Home? home) => home is { } at ? at with { IsPinTwo = false } : null;

    private static Table Direct(DocumentContext context, Links links, Machine machine)
    {
        var words = context.Words;
        return new(
            "direct",
            words.DirectHomes,
            [new(words.Designation), new(words.Device), new(words.Option), new(words.Station), new(words.Purpose)],
            [
                .. machine
                    .Instances.Where(instance => machine.Plan.HomeOf(instance.Key) is { IsDirect: true })
                    .Select(instance =>
                        Row.Of(
                            context.Designations.Of(instance),
                            links.Device(instance.Device),
                            links.Source(instance),
                            context.In(instance.Station.Title),
                            context.In(instance.Fit.Purpose)
                        )
                    ),
            ]
        );
    }
}
