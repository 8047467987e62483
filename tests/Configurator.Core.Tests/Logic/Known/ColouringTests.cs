using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Known;

/// <summary>A graph as a machine: a vertex is a choice of one colour, and neighbours never have the same.</summary>
public class ColouringTests
{
    // Source: chromatic polynomial of a cycle, (k-1)^n + (-1)^n (k-1).
    [Theory]
    [InlineData(3, 3, 6)]
    [InlineData(5, 3, 30)]
    [InlineData(6, 4, 732)]
    [InlineData(9, 2, 0)]
    [InlineData(20, 3, 1_048_578)]
    public void A_cycle_has_as_many_colourings_as_its_polynomial_says(int vertices, int colours, int colourings) =>
        Check(
            vertices,
            Enumerable.Range(0, vertices).Select(vertex => (vertex, (vertex + 1) % vertices)),
            colours,
            colourings
        );

    // Source: chromatic polynomial of a complete graph, k (k-1) ... (k-n+1).
    [Theory]
    [InlineData(4, 4, 24)]
    [InlineData(4, 3, 0)]
    [InlineData(5, 7, 2520)]
    public void A_complete_graph_has_as_many_colourings_as_its_polynomial_says(
        int vertices,
        int colours,
        int colourings
    ) =>
        Check(
            vertices,
            Enumerable.Range(0, vertices).SelectMany(one => Enumerable.Range(0, one).Select(other => (one, other))),
            colours,
            colourings
        );

    // Source: chromatic polynomial of a tree, k (k-1)^(n-1); 3 x 2^199 here, far beyond what could be tried out.
    [Fact]
    public void A_tree_of_two_hundred_vertices_has_as_many_colourings_as_its_polynomial_says() =>
        Check(200, Enumerable.Range(1, 199).Select(vertex => (vertex, vertex / 2)), 3, 3 * BigInteger.Pow(2, 199));

    // Source: chromatic polynomial of the Petersen graph at 3 and at 2 (120 from memory; 0 as it has odd cycles).
    [Theory]
    [InlineData(3, 120)]
    [InlineData(2, 0)]
    public void The_Petersen_graph_has_its_known_number_of_colourings(int colours, int colourings)
    {
        var ring = Enumerable.Range(0, 5).ToList();
        var edges = ring.Select(i => (i, (i + 1) % 5)) // the outer ring
            .Concat(ring.Select(i => (i, i + 5))) // the spokes
            .Concat(ring.Select(i => (i + 5, ((i + 2) % 5) + 5))); // the inner star
        Check(10, edges, colours, colourings);
    }

    private static void Check(
        int vertices,
        IEnumerable<(int One, int Other)> edges,
        int colours,
        BigInteger colourings
    ) => Assert.Equal(colourings, OrderLogic.Of(Graph(vertices, edges, colours)).Count(PartialOrder.Empty));

    private static Machine Graph(int vertices, IEnumerable<(int One, int Other)> edges, int colours)
    {
        var neighbours = edges.ToLookup(edge => edge.One, edge => edge.Other);
        var palette = Enumerable.Range(0, colours).ToList();
        return Machines.Of(
            Enumerable
                .Range(0, vertices)
                .SelectMany(vertex =>
                    palette.Select(colour =>
                        Machines.Option(Dot(vertex, colour).Value) with
                        {
                            NotWith = [.. neighbours[vertex].Select(other => Machines.Link(Dot(other, colour)))],
                        }
                    )
                ),
            Enumerable
                .Range(0, vertices)
                .Select(vertex =>
                    Machines.Choice("vertex", Take.ExactlyOne, palette.Select(colour => Dot(vertex, colour)))
                )
        );
    }

    private static OptionId Dot(int vertex, int colour) => new($"v{vertex}-{colour}");
}
