using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Definitions;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Core.Tests.Engineering.Hygiene;

// Source of every expected value: every configuration of small random machines, washed, one by one.
public class WorstWashTests
{
    private const int Cases = 100;

    [Fact]
    public void The_worst_of_each_hygiene_check_is_what_the_worst_configuration_comes_to() => ForAll(1, (report, machine, orders) =>
    {
        var worst = orders
            .SelectMany(order => Engineer.Compute(machine, order, machine.Plan).Findings)
            .Where(IsOfParts)
            .GroupBy(finding => finding.Id, StringComparer.Ordinal)
            .OrderBy(same => same.Key, StringComparer.Ordinal)
            .Select(same => Words(same.OrderByDescending(Rank).ThenBy(finding => finding.Margin?.Value ?? 0).First()));

        Assert.Equal(worst, report.Findings.Select(found => found.Finding).Where(IsOfParts).Select(Words));
    });

    [Fact]
    public void No_order_leaves_a_crew_without_an_agent_unless_the_report_says_so() => ForAll(2, (report, machine, orders) =>
        Assert.Equal(
            orders.Any(order => Engineer.Compute(machine, order, machine.Plan).Findings.Any(IsHarm)),
            report.Findings.Any(found => IsHarm(found.Finding))));

    [Fact]
    public void The_most_severe_washing_of_a_part_is_that_of_some_order_and_of_none_beyond() => ForAll(3, (report, machine, orders) =>
    {
        var seen = orders
            .SelectMany(order => WashedParts.On(FittedMachine.Of(machine, order, machine.Plan)).Select(part =>
                (part.About, Wash: Washing.MethodIn(machine, part.Area, order.QuantityOf))))
            .GroupBy(pair => pair.About, StringComparer.Ordinal)
            .Select(same => (same.Key, same.Max(pair => pair.Wash)))
            .Order();

        Assert.Equal(seen, report.Washed.Select(part => (part.About, part.Method)).Order());
    });

    private static bool IsOfParts(Finding finding) =>
        HygieneRules.All.Contains(finding.Rule) && finding.Rule != HygieneRules.Agents && finding.Rule != HygieneRules.Strength;

    private static bool IsHarm(Finding finding) =>
        finding.IsOpen && (finding.Rule == HygieneRules.Agents || finding is { Verdict: Verdict.Fail, Rule.Name: "hygiene.materials" });

    private static int Rank(Finding finding) => finding.Verdict switch
    {
        Verdict.Fail => 3,
        Verdict.Unstated => 2,
        Verdict.Review => 1,
        _ => 0,
    };

    private static string Words(Finding finding) => $"{finding.Id} {finding.Verdict} {finding.Margin}";

    private static void ForAll(int stream, Action<AllOrdersReport, Machine, ImmutableArray<Configuration>> law) => Parallel.For(0, Cases, i =>
    {
        var number = 700_000 + (stream * 1000) + i;
        var rig = RandomRigs.Tiny(number, 6);
        var machine = RigText.Logic(rig).Machine;
        machine = machine with { Plan = AllOrdersTests.RandomPlan(new(rig), machine, new(number)) };
        machine = WashedRig.Of(machine, rig.Options, new Dice(number));
        law(
            AllOrdersProof.Of(OrderLogic.Of(machine)),
            machine,
            [.. new RigFacts(rig).Configurations.Select(taken => AllOrdersTests.Of(machine, rig, taken))]);
    });
}
