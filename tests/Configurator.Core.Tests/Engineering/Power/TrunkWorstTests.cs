using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Logic.Weighing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Power;

/// <summary>The worst voltage over all configurations of the demonstration machines.</summary>
public class TrunkWorstTests
{
    private const int Sampled = 60;
    private const int EachOf = 12;

    public static TheoryData<string> Machines { get; } =
        [.. DemoCatalogue.Machines.Select(machine => machine.Id.Value.Value)];

    // Source: CP-SAT of OR-Tools, a solver that shares no code with ours; every twelfth sum, for it is slow.
    [Theory]
    [MemberData(nameof(Machines))]
    public void The_largest_drop_is_the_other_solvers(string id)
    {
        var logic = Logic(id);
        var sums = TrunkSums.Of(logic.Machine).Where((_, i) => i % EachOf == 0).ToList();
        var weigher = Weigher.Of(logic, sums.SelectMany(sum => sum.Terms).Select(term => term.When));

        Assert.NotEmpty(sums);
        Assert.All(
            sums,
            sum => Assert.Equal(IndependentOptimumTests.Optimum(logic, sum), weigher.Heaviest(sum, PartialOrder.Empty)!.Weight)
        );
    }

    // Law: no configuration drawn at random does worse than the worst that was proved.
    [Theory]
    [MemberData(nameof(Machines))]
    public void No_sampled_configuration_is_worse_than_the_worst(string id)
    {
        var logic = Logic(id);
        var worst = AllOrdersProof.Of(logic).Findings.ToDictionary(one => one.Finding.Id, StringComparer.Ordinal);
        var sample = Weigher.Of(logic, []).Sample(PartialOrder.Empty, Sampled, seed: 5)!.Value;

        Assert.Equal(Sampled, sample.Length);
        Assert.All(
            sample.SelectMany(order => Engineer.Compute(logic.Machine, order, logic.Machine.Plan).Findings)
                .Where(finding => PowerRules.All.Contains(finding.Rule) && finding.Margin is not null),
            finding => Assert.True(finding.Margin!.Value.Value >= worst[finding.Id].Finding.Margin!.Value.Value, finding.Id)
        );
    }

    // Law: one supply gives what both of its circuits draw in one order; the few orders of this machine are all drawn.
    [Fact]
    public void A_supply_of_two_circuits_is_looked_at_as_one()
    {
        var catalogue = BaseCatalogue.Whole.Check().Value;
        var report = Assert.Single(catalogue.AllOrders).Value;
        var logic = OrderLogic.Of(report.Machine);
        var least = Weigher.Of(logic, []).Sample(PartialOrder.Empty, 500, seed: 6)!.Value
            .SelectMany(order => Engineer.Compute(report.Machine, order, report.Machine.Plan).Findings)
            .Where(finding => finding.Id is "power.supply/supply")
            .Min(finding => finding.Margin!.Value);

        Assert.Equal(least, report.Findings.Single(one => one.Finding.Id is "power.supply/supply").Finding.Margin);
    }

    // Law: the trunk with every extension loses at least what any configuration loses; the load is that of the checks.
    [Theory]
    [MemberData(nameof(Machines))]
    public void The_volts_lost_on_the_way_to_a_master_are_weighed_by_name(string id)
    {
        var logic = Logic(id);
        var last = logic.Machine.Control.Masters.Last(master => !master.Ports.ClassB.IsEmpty);
        var load = MachineLoads.Named(logic.Machine).Single(one => one.Id == $"drop-actuators-{last.Name.Value}");
        var sum = MachineLoads.Of(logic.Machine, load);
        var heaviest = Weigher.Of(logic, sum.Terms.Select(term => term.When)).Heaviest(sum, PartialOrder.Empty)!;
        var worst = AllOrdersProof
            .Of(logic)
            .Findings.Single(one => one.Finding.Id == $"power.master-voltage/{last.Name.Value}/actuators");
        var lost = logic.Machine.Control.Power!.Lowest.InBase - worst.Finding.Value!.Value.Value;

        Assert.Equal(IndependentOptimumTests.Optimum(logic, sum), heaviest.Weight);
        Assert.True(new Rational(heaviest.Weight, 1_000_000) >= lost && lost * 2 > new Rational(heaviest.Weight, 1_000_000));
    }

    private static OrderLogic Logic(string id) =>
        OrderLogic.Of(DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == id));
}
