using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Model;

/// <summary>A point of the cable path: x along the machine from the infeed, y across, z up.</summary>
public sealed record RouteNode(NodeId Id, Micrometres X, Micrometres Y, Micrometres Z);

/// <summary>A stretch of the cable path between two nodes.</summary>
public sealed record RouteEdge(NodeId From, NodeId To, Micrometres Length);

/// <summary>The graph of cable paths along the frame; every cable length comes from it.</summary>
public sealed record Route(ImmutableArray<RouteNode> Nodes, ImmutableArray<RouteEdge> Edges)
{
    /// <summary>Many cables start at one node: the ways from it are found once.</summary>
    private static readonly ConditionalWeakTable<Route, ConcurrentDictionary<NodeId, Ways>> Known = [];

    public RouteNode? Find(NodeId id) => Nodes.FirstOrDefault(node => node.Id == id);

    /// <summary>The shortest way along the path from one node to every node that it reaches.</summary>
    public ImmutableDictionary<NodeId, Micrometres> DistancesFrom(NodeId start) =>
        TreeFrom(start).ToImmutableDictionary(node => node.Key, node => node.Value.Length);

    /// <summary>The nodes of that shortest way, both ends included; empty where none leads there.</summary>
    public ImmutableArray<NodeId> Way(NodeId start, NodeId end)
    {
        var tree = TreeFrom(start);
        var way = new List<NodeId>();
        for (NodeId? at = tree.ContainsKey(end) ? end : null; at is { } node; at = tree[node].Before)
        {
            way.Add(node);
        }

        way.Reverse();
        return [.. way];
    }

    /// <summary>How far each node is, and which comes before it on the way (Dijkstra; of equal ways the first by
    /// name).</summary>
    private Ways TreeFrom(NodeId start) => Known.GetOrCreateValue(this).GetOrAdd(start, Search);

    private Ways Search(NodeId start)
    {
        var open = new PriorityQueue<(NodeId Node, NodeId? Before), (long, string)>();
        var best = new Ways();
        open.Enqueue((start, null), (0, start.Value));
        while (open.TryDequeue(out var step, out var at))
        {
            if (!best.TryAdd(step.Node, (new(at.Item1), step.Before)))
            {
                continue;
            }

            foreach (var (next, length) in StepsFrom(step.Node).Where(next => !best.ContainsKey(next.Next)))
            {
                open.Enqueue((next, step.Node), (at.Item1 + length.Value, $"{next.Value} {step.Node.Value}"));
            }
        }

        return best;
    }

    private sealed class Ways : Dictionary<NodeId, (Micrometres Length, NodeId? Before)>;

    private IEnumerable<(NodeId Next, Micrometres Length)> StepsFrom(NodeId node) =>
        Edges
            .Where(edge => edge.From == node || edge.To == node)
            .Select(edge => (edge.From == node ? edge.To : edge.From, edge.Length));
}
