using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Documents.Parts;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every cable in one schedule, and what to bring to each station.</summary>
internal static class CablesDocument
{
    public const string Name = "cables";
    public const string Suffix = "CS";

    public static ConfigurationDocument Document { get; } =
        new(Name, Suffix, words => words.Cables, words => words.CablesLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var (words, cables) = (context.Words, CableList.Of(context));
        yield return new("schedule", words.CableSchedule, [Schedule(context, cables)]);
        yield return new(
            "laying",
            words.LayingList,
            [new Paragraph(words.LayingLead), LayingTable.Of(context, cables)]
        );
        yield return new("pick", words.PickList, [new Paragraph(words.PickLead), PickList(context, cables)]);
    }

    private static Table Schedule(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "cable-schedule",
            words.CableSchedule,
            [
                new(words.Cable),
                new(words.FromItem),
                new(words.ToItem),
                new(words.Location),
                new(words.Area),
                new(words.Type),
                new(words.Cores, IsNumber: true),
                new(words.CoreColours),
                new(words.CrossSection),
                new(words.Jacket),
                new(words.Needed, IsNumber: true),
                new(words.Length, IsNumber: true),
                new(words.Lane),
                new(words.Connectors),
            ],
            [.. cables.OrderBy(cable => cable.Name, StringComparer.Ordinal).Select(cable => RowOf(context, cable))]
        );
    }

    private static Row RowOf(ConfigurationContext context, CableEntry cable) =>
        new(
            [
                cable.Name,
                cable.From.Item,
                cable.To.Item,
                CableWords.Place(context, cable.To.Station),
                context.In(cable.To.Station.Area.Title),
                cable.Cordset is { } cordset ? context.Links.Device(cordset) : new Link(context.Words.CutToLength),
                cable.Cores.IsEmpty ? "" : cable.Cores.Length.ToString(CultureInfo.InvariantCulture),
                string.Join(' ', cable.Cores.Select(core => core.Mark)),
                CableWords.Sizes(context, cable.Conductor, cable.Cores.Select(core => core.Conductor)),
                CableWords.Jacket(context.Words, cable.Jacket, cable.Leads),
                cable.Run.Needed?.ToString() ?? "",
                CableWords.Length(context, cable),
                CableWords.Lane(context, cable),
                $"{CableWords.Connector(context, cable.From)} – {CableWords.Connector(context, cable.To)}",
            ],
            Id: cable.Anchor
        );

    private static Table PickList(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "pick-list",
            words.PickList,
            [
                new(words.Location),
                new(words.Bring),
                new(words.Length, IsNumber: true),
                new(words.Cable),
                new(words.ForItem),
            ],
            [
                .. Devices(context)
                    .Concat(Caps(context))
                    .Concat(cables.Select(cable => OfCable(context, cable)))
                    .OrderBy(item => context.Names.Of(item.Station), StringComparer.Ordinal)
                    .ThenBy(item => item.IsCable)
                    .ThenBy(item => item.Row.Cells[1].Text, StringComparer.Ordinal)
                    .ThenBy(item => item.Micrometres)
                    .ThenBy(item => item.Row.Cells[4].Text, StringComparer.Ordinal)
                    .Select(item => item.Row),
            ]
        );
    }

    /// <summary>Masters, and whatever else is mounted outside the box.</summary>
    private static IEnumerable<Picked> Devices(ConfigurationContext context) =>
        context
            .Fitted.Masters.Select(master => (master.Station, master.Device, Name: context.Names.Of(master)))
            .Concat(
                context.Fitted.Cabled.Select(pair =>
                    (pair.Instance.Station, pair.Instance.Device, Name: context.Names.Of(pair.Instance))
                )
            )
            .Select(item => new Picked(
                item.Station,
                IsCable: false,
                0,
                Row.Of(CableWords.Place(context, item.Station), context.Links.Device(item.Device), "", "", item.Name)
            ));

    /// <summary>For ports that stay open, by the station of their master or hub.</summary>
    private static IEnumerable<Picked> Caps(ConfigurationContext context) =>
        context.Fitted.Machine.Sanitation?.Cap is not { } cap
            ? []
            : PartsList
                .Capped(context)
                .GroupBy(place => place.Station.Id.Value)
                .Select(places => new Picked(
                    places.First().Station,
                    IsCable: false,
                    0,
                    new([
                        CableWords.Place(context, places.First().Station),
                        new([
                            context.Links.Device(cap) with
                            {
                                Text = $"{DocumentContext.Print(places.Count())} × {context.In(cap.Title)}",
                            },
                        ]),
                        "",
                        "",
                        string.Join(", ", places.Select(place => place.Name)),
                    ])
                ));

    private static Picked OfCable(ConfigurationContext context, CableEntry cable) =>
        new(
            cable.To.Station,
            IsCable: true,
            cable.Run.Needed?.Value ?? 0,
            Row.Of(
                CableWords.Place(context, cable.To.Station),
                cable.Cordset is { } cordset ? context.Links.Device(cordset) : new Link(context.Words.CutToLength),
                CableWords.Length(context, cable),
                new Link(cable.Name, "#" + cable.Anchor),
                cable.To.Item
            )
        );

    private sealed record Picked(Station Station, bool IsCable, long Micrometres, Row Row);
}
