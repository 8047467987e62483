using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What is plugged into every port of this machine, and which ports are to be capped.</summary>
internal static class PortMapDocument
{
    public static ConfigurationDocument Document { get; } =
        new("port-map", "PM", words => words.PortMap, _ => "", Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        foreach (var carrier in Carriers(context.Fitted))
        {
            yield return new(
                $"carrier-{carrier.Name}",
                $"{carrier.Designation(context.Names)} {carrier.Name}",
                [
                    new Facts([
                        new(context.Words.Device, [context.Links.Device(carrier.Device)]),
                        Fact.Of(
                            context.Words.Location,
                            $"{context.Names.Of(carrier.Station)}, {context.In(carrier.Station.Title)}"
                        ),
                    ]),
                    PortStrip.Of(context, carrier),
                    Ports(context, carrier),
                ]
            );
        }

        yield return new("direct", context.Words.DirectHomes, [Direct(context)]);
    }

    public static IEnumerable<Carrier> Carriers(FittedMachine fitted) =>
        fitted
            .Masters.Select(master => new Carrier(master.Name.Value, master.Device, master.Station, names =>
                names.Of(master)
            ))
            .Concat(
                fitted
                    .Fitted.Where(instance => FittedMachine.AsCarrier(instance) is not null)
                    .Select(hub => new Carrier(FittedMachine.AsCarrier(hub)!.Value, hub.Device, hub.Station, names =>
                        names.Of(hub)
                    ))
            );

    private static Table Ports(ConfigurationContext context, Carrier carrier)
    {
        var words = context.Words;
        var plugged = context.Fitted.PluggedInto(carrier.Name).ToLookup(pair => pair.Home.Port, pair => pair.Instance);
        return new(
            $"ports-{carrier.Name}",
            $"{words.PortMap}: {carrier.Designation(context.Names)}",
            [
                new(words.Port),
                new(words.PortClass),
                new(words.Designation),
                new(words.Device),
                new(words.Station),
                new(words.Purpose),
                new(words.Mode),
                new(words.ProcessData),
                new(words.Cycle, IsNumber: true),
                new(words.Current, IsNumber: true),
            ],
            [
                .. carrier.Device.Ports!.Numbers.SelectMany(port =>
                    plugged[port].Any()
                        ? plugged[port]
                            .OrderBy(instance => instance.Key)
                            .Select(instance => PortRow(context, carrier, port, instance))
                        : [SpareRow(context, carrier, port)]
                ),
            ]
        );
    }

    private static Row PortRow(ConfigurationContext context, Carrier carrier, int port, FitInstance instance) =>
        Row.Of(
            DocumentContext.Print(port)
                + (context.Fitted.Pins.HomeOf(instance.Key) is { IsPinTwo: true } ? " pin 2" : ""),
            ClassOf(carrier, port),
            context.Names.Of(instance),
            context.Links.Device(instance.Device),
            context.In(instance.Station.Title),
            context.In(instance.Fit.Purpose),
            instance.Device.Connection == ConnectionKind.IoLink ? "IO-Link" : context.Words.ModeSwitching,
            instance.Device.IoLink is { } data
                ? FormattableString.Invariant($"{data.InputOctets}/{data.OutputOctets} octets")
                : "",
            instance.Device.IoLink is { } cycle
                ? $"{context.Documents.Print(cycle.Cycle)} {cycle.Rate.ToString().ToUpperInvariant()}"
                : "",
            CurrentChecks.Draw(context.Fitted, instance).ToString()
        );

    private static Row SpareRow(ConfigurationContext context, Carrier carrier, int port)
    {
        var isHome = context.Fitted.Pins.Homes.Values.Any(home =>
            home.Value with { IsPinTwo = false } == new Home(carrier.Name, port)
        );
        return new(
            [
                DocumentContext.Print(port),
                ClassOf(carrier, port),
                isHome ? context.Words.SpareReserved : context.Words.Spare,
                "",
                "",
                "",
                "",
                "",
                "",
                "",
            ],
            "spare"
        );
    }

    private static string ClassOf(Carrier carrier, int port) =>
        WordLists.Of(carrier.Device.Ports!.ClassOf(port)!.Value);

    private static Table Direct(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "direct",
            words.DirectHomes,
            [new(words.Designation), new(words.Device), new(words.Station), new(words.Purpose), new(words.Terminal)],
            [
                .. context
                    .Fitted.Cabled.Where(pair => pair.Home is { IsDirect: true })
                    .Select(pair =>
                        Row.Of(
                            context.Names.Of(pair.Instance),
                            context.Links.Device(pair.Instance.Device),
                            context.In(pair.Instance.Station.Title),
                            context.In(pair.Instance.Fit.Purpose),
                            context.Names.TerminalsOf(pair.Instance)
                        )
                    ),
            ]
        );
    }
}

/// <summary>A mounted master or hub.</summary>
internal sealed record Carrier(MasterName Name, Device Device, Station Station, Func<Designations, string> Designation);
