using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Which part of the machine is washed how: a row for each area, its stations along the machine by
/// number.</summary>
internal static class AreaMap
{
    private const int Width = 760;
    private const int NameWidth = 240;
    private const int WashWidth = 250;
    private const int Row = 28;
    private const int Top = 6;
    private const int Apart = 24;
    private const int Radius = 11;

    public static Drawing Of(ConfigurationContext context)
    {
        var machine = context.Engineered.Machine;
        var rows = machine
            .Areas.Where(area => StationsIn(machine, area).Any())
            .Select((area, row) => (area, row))
            .ToList();
        return new(
            "area-map",
            context.Words.AreaMap,
            string.Join("; ", rows.Select(pair => $"{Title(context, pair.area)}: {Names(context, pair.area)}")),
            Width,
            (rows.Count * Row) + (2 * Top),
            [.. rows.SelectMany(pair => RowOf(context, pair.area, Top + (pair.row * Row)))]
        );
    }

    private static IEnumerable<Shape> RowOf(ConfigurationContext context, Area area, int y)
    {
        var style = WordLists.Plain(area.Class).Replace(' ', '-');
        var wash = WordLists.Of(SanitationFacts.WashOf(context.Fitted, area), context.Words);
        yield return new Box(NameWidth, y, Width - NameWidth - WashWidth, Row - 4, style);
        yield return new Label(NameWidth - 8, y + 17, context.In(area.Title), "end", "number");
        yield return new Label(Width - WashWidth + 8, y + 17, wash, "start", "number");
        var last = NameWidth;
        foreach (var (station, number) in StationsIn(context.Engineered.Machine, area))
        {
            last = Math.Max(last + Apart, Along(context.Engineered.Machine, station));
            yield return new Ring(last, y + 12, Radius, "open");
            yield return new Label(last, y + 17, DocumentContext.Print(number), "middle", "number");
        }
    }

    /// <summary>What the numbers stand for, and which areas are washed otherwise because of what is fitted.</summary>
    public static string Legend(ConfigurationContext context)
    {
        var machine = context.Engineered.Machine;
        var stations = string.Join(
            ", ",
            machine.Stations.Select((station, i) => FormattableString.Invariant($"{i + 1} {context.In(station.Title)}"))
        );
        var changed = string.Join(
            ", ",
            machine
                .Areas.Where(area => SanitationFacts.WashOf(context.Fitted, area) != area.Wash)
                .Select(area => context.In(area.Title))
        );
        return $"{stations}." + (changed.Length > 0 ? $" {context.Words.WashedOtherwise(changed)}" : "");
    }

    private static string Title(ConfigurationContext context, Area area) =>
        $"{context.In(area.Title)}: {WordLists.Of(SanitationFacts.WashOf(context.Fitted, area), context.Words)}";

    private static string Names(ConfigurationContext context, Area area) =>
        string.Join(
            ", ",
            StationsIn(context.Engineered.Machine, area)
                .Select(pair => FormattableString.Invariant($"{pair.Number} {context.In(pair.Station.Title)}"))
        );

    /// <summary>By their number on the layout drawing, in order along the machine.</summary>
    private static IEnumerable<(Station Station, int Number)> StationsIn(Machine machine, Area area) =>
        machine
            .Stations.Select((station, i) => (Station: station, Number: i + 1))
            .Where(pair => pair.Station.Area.Id.Value == area.Id.Value)
            .OrderBy(pair => Along(machine, pair.Station))
            .ThenBy(pair => pair.Number);

    private static int Along(Machine machine, Station station)
    {
        var nodes = machine.Route.Nodes.ToImmutableDictionary(node => node.Id);
        var from = nodes.Values.Min(node => node.X.Value);
        var length = Math.Max(1, nodes.Values.Max(node => node.X.Value) - from);
        const int Room = Width - NameWidth - WashWidth - 40;
        return NameWidth + 20 + (int)((nodes[station.Node].X.Value - from) * Room / length);
    }
}
