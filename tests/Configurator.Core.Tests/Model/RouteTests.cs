using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using CsCheck;

namespace Configurator.Core.Tests.Model;

public class RouteTests
{
    // Hand-worked: a to c is 3 m over b, shorter than 5 m straight; d hangs nowhere.
    [Fact]
    public void The_shortest_way_counts_and_what_is_not_connected_is_not_reached()
    {
        var ways = Of(4, (0, 1, 1), (1, 2, 2), (0, 2, 5)).DistancesFrom(Node(0));
        Assert.Equal([(Node(0), 0), (Node(1), 1), (Node(2), 3)], ways.OrderBy(way => way.Key.Value).Select(way => (way.Key, way.Value.Value)));
    }

    [Fact]
    public void A_way_names_every_node_that_it_passes()
    {
        var route = Of(4, (0, 1, 1), (1, 2, 2), (0, 2, 5));
        Assert.Equal([Node(2), Node(1), Node(0)], route.Way(Node(2), Node(0)));
        Assert.Equal([Node(0)], route.Way(Node(0), Node(0)));
        Assert.Empty(route.Way(Node(0), Node(3)));
    }

    // Law: the steps of a way are edges, and together as long as the way.
    [Fact]
    public void The_steps_of_a_way_add_up_to_its_length() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[0, 9]).Array[0, 12].Sample(edges =>
        {
            var route = Of(6, edges);
            var best = Brute(6, edges);
            return Enumerable.Range(0, 6).All(to => route.Way(Node(0), Node(to)) is var way
                && (way.IsEmpty ? best[0, to] is null : way[1..].Zip(way).Sum(step => Shortest(edges, step.First, step.Second)) == best[0, to]));
        });

    // Second algorithm: Floyd and Warshall's, over all middle nodes.
    [Fact]
    public void Ways_are_those_of_a_second_algorithm() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[0, 9]).Array[0, 12].Sample(edges =>
        {
            var route = Of(6, edges);
            var best = Brute(6, edges);
            for (var from = 0; from < 6; from++)
            {
                var ways = route.DistancesFrom(Node(from));
                for (var to = 0; to < 6; to++)
                {
                    Assert.Equal(best[from, to], ways.TryGetValue(Node(to), out var way) ? way.Value : null);
                }
            }
        });

    // Law: a cable is as long in the one direction as in the other.
    [Fact]
    public void A_way_back_is_as_long_as_the_way_there() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[0, 9]).Array[0, 12].Sample(edges =>
            Of(6, edges).DistancesFrom(Node(0)).All(way => Of(6, edges).DistancesFrom(way.Key)[Node(0)] == way.Value));

    private static long Shortest((int From, int To, int Length)[] edges, NodeId one, NodeId other) =>
        edges.Where(edge => (Node(edge.From) == one && Node(edge.To) == other) || (Node(edge.From) == other && Node(edge.To) == one))
            .Min(edge => edge.Length);

    private static long?[,] Brute(int nodes, (int From, int To, int Length)[] edges)
    {
        var best = new long?[nodes, nodes];
        foreach (var (from, to, length) in edges.Concat(Enumerable.Range(0, nodes).Select(node => (node, node, 0))))
        {
            best[from, to] = best[to, from] = Math.Min(best[from, to] ?? long.MaxValue, length);
        }

        foreach (var (middle, from, to) in from middle in Enumerable.Range(0, nodes)
                                           from start in Enumerable.Range(0, nodes)
                                           from end in Enumerable.Range(0, nodes)
                                           select (middle, start, end))
        {
            if (best[from, middle] + best[middle, to] is { } sum && sum < (best[from, to] ?? long.MaxValue))
            {
                best[from, to] = sum;
            }
        }

        return best;
    }

    private static Route Of(int nodes, params (int From, int To, int Length)[] edges) => new(
        [.. Enumerable.Range(0, nodes).Select(node => new RouteNode(Node(node), default, default, default))],
        [.. edges.Select(edge => new RouteEdge(Node(edge.From), Node(edge.To), new Micrometres(edge.Length)))]);

    private static NodeId Node(int number) => new("abcdef"[number].ToString());
}
