using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class RouteBindingTests
{
    // Source: Pythagoras: 3 m along and 4 m across are 5 m straight.
    [Fact]
    public void An_edge_is_as_long_as_its_straight_line() =>
        Assert.Equal([3_000_000, 5_000_000], Lengths(Check.Small));

    // Source: Pythagoras in space: 2, 3 and 6 m are the sides of a box with a diagonal of 7 m.
    [Fact]
    public void Height_counts_as_well() => Assert.Equal([3_000_000, 7_000_000], Lengths(Check.Small
        .Machine("x: 6 m, y: 4 m, z: 2 m", "x: 5 m, y: -3 m, z: 8 m")));

    // Hand-worked: the diagonal of 1 m by 1 m is 1.41421356... m, rounded up to the next micrometre.
    [Fact]
    public void A_line_that_is_no_whole_number_of_micrometres_is_rounded_up() => Assert.Equal([3_000_000, 1_414_214], Lengths(Check.Small
        .Machine("x: 6 m, y: 4 m, z: 2 m", "x: 4 m, y: 1 m, z: 2 m")));

    [Fact]
    public void A_stated_length_is_taken_for_the_straight_line() => Assert.Equal([3_000_000, 6_400_000], Lengths(Check.Small
        .Machine("{from: middle, to: far-end}", "{from: middle, to: far-end, length: 6.4 m}")));

    // A frame of the largest coordinates that can be written: no sum or square overflows.
    [Fact]
    public void The_longest_edge_that_can_be_written_is_computed() => Assert.Equal([3_000_000, 200_000_000_000_000], Lengths(Check.Small
        .Machine("x: 3 m, y: 0 mm, z: 2 m", "x: 3 m, y: 100000000 m, z: 2 m")
        .Machine("{from: box-top, to: middle}", "{from: box-top, to: middle, length: 3 m}")
        .Machine("x: 6 m, y: 4 m, z: 2 m", "x: 3 m, y: -100000000 m, z: 2 m")));

    [Fact]
    public void A_station_without_a_cable_path_is_reported_at_its_id() => Check.Small
        .Machine("    - {from: middle, to: far-end}\n", "")
        .Machine("station: outfeed, title", "station: [|outfeed|], title")
        .Says(
            """
            CFG2015 no cable path leads from station `outfeed` to the control box at node `box-top`
            to fix: add the missing edge to the route
            """);

    [Fact]
    public void Every_station_without_a_cable_path_is_reported() => Check.Small
        .Machine("    - {from: box-top, to: middle}\n", "")
        .Machine("station: outfeed, title", "station: [|outfeed|], title")
        .Machine("station: filler, title", "station: [|filler|], title")
        .Says(
            "CFG2015 no cable path leads from station `filler` to the control box at node `box-top`",
            "CFG2015 no cable path leads from station `outfeed` to the control box at node `box-top`");

    [Fact]
    public void A_node_that_nobody_uses_is_no_mistake() => Check.Small
        .Machine("    - {node: middle", "    - {node: spare, x: 9 m, y: 0 m, z: 0 m}\n    - {node: middle")
        .Says();

    [Fact]
    public void A_fault_in_a_node_is_reported_once_whatever_hangs_on_it() => Check.Small
        .Machine("x: 3 m", "x: [|3|]")
        .Says("CFG2010 `3` has no unit");

    private static IEnumerable<long> Lengths(Check check) => check.TheMachine.Route.Edges.Select(edge => edge.Length.Value);
}
