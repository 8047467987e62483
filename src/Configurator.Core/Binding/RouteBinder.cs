using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the cable paths of a machine.</summary>
internal static class RouteBinder
{
    public static Route Bind(Fields f, ICollection<Diagnostic> report)
    {
        var nodes = Unique.By(
            "node",
            f.Records("nodes").Select(ReadNode).OfType<PlacedNode>(),
            node => node.Name,
            report
        );
        var names = Names<PlacedNode>.Of("node", nodes, node => node.Name.Value);
        if (!f.AreSound("nodes"))
        {
            return new([.. nodes.Select(node => node.Node)], []);
        }

        var edges = f.Records("edges").Select(edge => ReadEdge(edge, names, report)).OfType<RouteEdge>();
        return new([.. nodes.Select(node => node.Node)], [.. edges]);
    }

    private static PlacedNode? ReadNode(Fields f) =>
        f.One<string>("node") is { } name
        && f.Value<Quantity>("x") is { } x
        && f.Value<Quantity>("y") is { } y
        && f.Value<Quantity>("z") is { } z
            ? new(name, new(new(name.Value), Micrometres.From(x), Micrometres.From(y), Micrometres.From(z)))
            : null;

    private static RouteEdge? ReadEdge(Fields f, Names<PlacedNode> nodes, ICollection<Diagnostic> report)
    {
        if (
            f.One<string>("from") is not { } from
            || f.One<string>("to") is not { } to
            || nodes.Find(from, report) is not { } start
            || nodes.Find(to, report) is not { } end
        )
        {
            return null;
        }

        return new(
            start.Node.Id,
            end.Node.Id,
            f.Value<Quantity>("length") is { } length ? Micrometres.From(length) : Straight(start.Node, end.Node)
        );
    }

    /// <summary>The straight line, rounded up to whole micrometres.</summary>
    private static Micrometres Straight(RouteNode from, RouteNode to)
    {
        var square = Square(from.X - to.X) + Square(from.Y - to.Y) + Square(from.Z - to.Z);
        var root = (long)Math.Sqrt((double)square);
        while ((Int128)root * root < square)
        {
            root++;
        }

        while (root > 0 && (Int128)(root - 1) * (root - 1) >= square)
        {
            root--;
        }

        return new(root);
    }

    private static Int128 Square(Micrometres length) => (Int128)length.Value * length.Value;

    private sealed record PlacedNode(Located<string> Name, RouteNode Node);
}
