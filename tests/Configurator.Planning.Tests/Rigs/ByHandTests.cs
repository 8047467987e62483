using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Small machines whose plans are worked out by hand.</summary>
public class ByHandTests
{
    // The hub draws 30 mA and each band 90 mA: together 210 mA through one port.
    [Theory]
    [InlineData(200, 1)]
    [InlineData(500, 2)]
    public void A_hub_takes_no_more_guests_than_its_port_can_feed(int perPort, int guests)
    {
        var rig = Of(
            [new(0, 2, 0, false, perPort, null, null, false)],
            Fit("f1", Gadget.Band),
            Fit("f2", Gadget.Band),
            Fit("hub", Gadget.Hub)
        ) with
        {
            Spare = 1,
        };
        var plan = RigPlanner.Plan(RigText.Logic(rig));

        Assert.Empty(plan.Unplaced);
        Assert.Equal(guests, plan.Homes.Values.Count(home => home.Master!.Value.Value == "hub"));
    }

    [Fact]
    public void Two_that_are_ordered_together_and_have_one_port_are_parted_by_the_fewest_moves()
    {
        var rig = Of([new(0, 3, 0, false, 200, null, null, false)], Fit("f1", Gadget.Eye), Fit("f2", Gadget.Eye));
        var plan = RigPlanner.Plan(RigText.Logic(rig), Homes("f1 m0:1, f2 m0:1"), PlanMode.FewestMoves);

        Assert.Single(plan.Moved);
        Assert.Equal(2, plan.Homes.Values.Distinct().Count());
        Assert.Equal(1, plan.Stages.Single(stage => stage.Stage == PlanStage.Moves).Value);
    }

    [Fact]
    public void A_home_where_the_device_cannot_live_is_given_up_by_the_fewest_moves()
    {
        var rig = Of([new(0, 2, 2, false, 200, null, null, false)], Fit("f1", Gadget.Valves), Fit("f2", Gadget.Eye));
        var plan = RigPlanner.Plan(RigText.Logic(rig), Homes("f1 m0:1, f2 m0:2"), PlanMode.FewestMoves);

        Assert.Equal("m0:3", plan.Homes[InstanceKey.Parse("standard/f1/1")!.Value].ToString());
        Assert.Equal("m0:2", plan.Homes[InstanceKey.Parse("standard/f2/1")!.Value].ToString());
    }

    [Fact]
    public void A_fit_without_a_port_is_said_with_its_reasons_and_its_rivals()
    {
        var rig = Of([new(0, 1, 0, false, 200, null, null, false)], Fit("f1", Gadget.Eye), Fit("f2", Gadget.Eye), Fit("f3", Gadget.Valves));
        var plan = RigPlanner.Plan(RigText.Logic(rig));
        var report = PlanReport.Of(plan);

        Assert.Equal(2, plan.Unplaced.Length);
        Assert.Contains("  2 fits without a port (proved: fewer is impossible with these homes kept)\n", report, StringComparison.Ordinal);
        Assert.Contains("    not at `m0` class A: a class A port has no extra supply for a class B device\n", report, StringComparison.Ordinal);
        Assert.Matches("    1 ports could take it; this order wants 2: ", report);
        Assert.Matches("    competes with standard/f[12]/1\n", report);
    }

    [Fact]
    public void A_spare_port_is_taken_only_where_a_fit_would_have_none()
    {
        var rig = Of([new(0, 2, 0, false, 200, null, null, false)], Fit("f1", Gadget.Eye), Fit("f2", Gadget.Eye)) with { Spare = 1 };
        var plan = RigPlanner.Plan(RigText.Logic(rig));

        Assert.Empty(plan.Unplaced);
        Assert.Equal(1, plan.Stages.Single(stage => stage.Stage == PlanStage.SpareTaken).Value);
    }

    private static Rig Of(ImmutableArray<RigMaster> masters, params RigFit[] fits) =>
        new(masters, 1, 0, [], [.. fits], 0, HasSplitter: false, Direct: 0);

    private static RigFit Fit(string name, Gadget gadget) => new(null, null, name, gadget, 0);

    private static ImmutableSortedDictionary<InstanceKey, Home> Homes(string words) =>
        words
            .Split(", ")
            .Select(pair => pair.Split(' '))
            .ToImmutableSortedDictionary(
                pair => InstanceKey.Parse($"standard/{pair[0]}/1")!.Value,
                pair => Home.Parse(pair[1])!.Value
            );
}
