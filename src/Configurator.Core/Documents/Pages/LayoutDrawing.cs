using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>The stations of a machine as numbered places along it, seen from above.</summary>
internal static class LayoutDrawing
{
    private const int Width = 960;
    private const int Margin = 40;
    private const int TrayY = 60;
    private const int Step = 26;

    public static Drawing Of(DocumentContext context, Machine machine)
    {
        var nodes = machine.Route.Nodes.ToDictionary(node => node.Id);
        var from = nodes.Values.Min(node => node.X.Value);
        var to = Math.Max(from + 1, nodes.Values.Max(node => node.X.Value));
        ImmutableArray<Shape> stations =
        [
            .. machine.Stations.SelectMany(
                (station, i) => Place(station, i, Scale(nodes[station.Node].X.Value, from, to))
            ),
        ];
        var height = TrayY + 40 + Step;
        var names = string.Join(
            ", ",
            machine.Stations.Select((station, i) => FormattableString.Invariant($"{i + 1} {context.In(station.Title)}"))
        );
        return new(
            "layout-drawing",
            context.Words.Layout,
            names,
            Width,
            height,
            [new Stroke(Margin, TrayY, Width - Margin, TrayY, "route"), .. stations]
        );
    }

    private static IEnumerable<Shape> Place(Station station, int index, int x)
    {
        var y = index % 2 == 0 ? TrayY - Step : TrayY + Step;
        var at = x + ((index % 3) * 18) - 18;
        yield return new Stroke(x, TrayY, at, y, "drop");
        yield return new Ring(at, y, 13, WordLists.Plain(station.Area.Class).Replace(' ', '-'));
        yield return new Label(at, y + 5, DocumentContext.Print(index + 1), "middle", "number");
    }

    private static int Scale(long x, long from, long to) =>
        Margin + 20 + (int)((x - from) * (Width - (2 * Margin) - 40) / (to - from));
}
