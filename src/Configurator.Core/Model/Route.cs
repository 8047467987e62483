using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Model;

/// <summary>A point of the cable path: x along the machine from the infeed, y across, z up.</summary>
public sealed record RouteNode(NodeId Id, Micrometres X, Micrometres Y, Micrometres Z);

/// <summary>A stretch of the cable path between two nodes.</summary>
public sealed record RouteEdge(NodeId From, NodeId To, Micrometres Length);

/// <summary>The graph of cable paths along the frame; every cable length comes from it.</summary>
public sealed record Route(ImmutableArray<RouteNode> Nodes, ImmutableArray<RouteEdge> Edges)
{
    public RouteNode? Find(NodeId id) => Nodes.FirstOrDefault(node => node.Id == id);

    /// <summary>The shortest way along the path from one node to every node that it reaches (Dijkstra).</summary>
    public ImmutableDictionary<NodeId, Micrometres> DistancesFrom(NodeId start)
    {
        var open = new PriorityQueue<NodeId, (long, string)>();
        var best = new Dictionary<NodeId, Micrometres>();
        open.Enqueue(start, (0, start.Value));
        while (open.TryDequeue(out var node, out var at))
        {
            if (!best.TryAdd(node, new(at.Item1)))
            {
                continue;
            }

            foreach (var (next, length) in StepsFrom(node).Where(step => !best.ContainsKey(step.Next)))
            {
                open.Enqueue(next, (at.Item1 + length.Value, next.Value));
            }
        }

        return best.ToImmutableDictionary();
    }

    private IEnumerable<(NodeId Next, Micrometres Length)> StepsFrom(NodeId node) =>
        Edges
            .Where(edge => edge.From == node || edge.To == node)
            .Select(edge => (edge.From == node ? edge.To : edge.From, edge.Length));
}
