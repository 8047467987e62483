using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Definitions;
using Configurator.Core.Tests.Engineering.Rigs;
using OrderShare = Configurator.Core.Engineering.AllOrders.OrderShare;

namespace Configurator.Core.Tests.Engineering;

// Source of every expected value: engineering every configuration of small machines whose homes are drawn at random,
// good ones and bad ones. A home at a hub that is not always there fails by itself, so that none is drawn.
public class AllOrdersTests
{
    private const int Cases = 100;

    [Fact]
    public void The_worst_of_each_check_is_what_the_worst_configuration_comes_to() =>
        ForAll(
            1,
            (report, machine, orders) =>
            {
                var worst = orders
                    .SelectMany(order => Engineer.Compute(machine, order, machine.Plan).Findings)
                    .GroupBy(finding => finding.Id, StringComparer.Ordinal)
                    .OrderBy(same => same.Key, StringComparer.Ordinal)
                    .Select(Worst);

                Assert.Equal(worst, report.Findings.Select(found => Words(found.Finding)));
            }
        );

    [Fact]
    public void The_configuration_that_is_named_reaches_its_worst_case_exactly() =>
        ForAll(
            2,
            (report, machine, orders) =>
                Assert.All(
                    report.Findings,
                    found =>
                        Assert.Contains(
                            Engineer.Compute(machine, found.Configuration, machine.Plan).Findings,
                            finding => finding.Id == found.Finding.Id && Words(finding) == Words(found.Finding)
                        )
                )
        );

    [Fact]
    public void An_extension_is_fitted_in_as_many_configurations_as_are_counted_one_by_one() =>
        ForAll(
            3,
            (report, machine, orders) =>
                Assert.Equal(
                    machine
                        .Control.Masters.Where(master => master.IsExtension)
                        .Select(master => (master.Name.Value, Share(orders, order => Has(machine, order, master)))),
                    report.Extensions.Select(share => (share.Key, share.Value))
                )
        );

    [Fact]
    public void A_port_is_used_in_as_many_configurations_as_are_counted_one_by_one() =>
        ForAll(
            4,
            (report, machine, orders) =>
                Assert.Equal(
                    machine
                        .Plan.Homes.Values.Where(home => !home.Value.IsDirect)
                        .Select(home => home.Value with { IsPinTwo = false })
                        .Distinct()
                        .Select(port => (port.ToString(), Share(orders, order => Uses(machine, order, port))))
                        .Order(),
                    report.Ports.Select(share => (share.Key.ToString(), share.Value)).Order()
                )
        );

    private static string Worst(IEnumerable<Finding> same) =>
        Words(
            same.OrderBy(finding => finding.Verdict == Verdict.Pass)
                .ThenBy(finding => finding.Margin?.Value ?? 0)
                .First()
        );

    private static string Words(Finding finding) => $"{finding.Id} {finding.Verdict} {finding.Margin}";

    private static OrderShare Share(ImmutableArray<Configuration> orders, Func<Configuration, bool> has) =>
        new(new BigInteger(orders.Count(has)), new BigInteger(orders.Length));

    private static bool Has(Machine machine, Configuration order, Master master) =>
        machine.Instances.Any(instance =>
            instance.IsFitted(order) && machine.Plan.HomeOf(instance.Key)?.Master == master.Name.Value
        );

    private static bool Uses(Machine machine, Configuration order, Home port) =>
        machine.Instances.Any(instance =>
            instance.IsFitted(order) && machine.Plan.HomeOf(instance.Key) is { } home && (home with { IsPinTwo = false }) == port
        );

    private static void ForAll(int stream, Action<AllOrdersReport, Machine, ImmutableArray<Configuration>> law) =>
        Parallel.For(
            0,
            Cases,
            i =>
            {
                var number = 500_000 + (stream * 1000) + i;
                var rig = RandomRigs.Tiny(number, 8);
                var machine = RigText.Logic(rig).Machine;
                machine = machine with { Plan = RandomPlan(new(rig), machine, new(number)) };
                var report = AllOrdersProof.Of(OrderLogic.Of(machine));
                law(report, machine, [.. new RigFacts(rig).Configurations.Select(taken => Of(machine, rig, taken))]);
            }
        );

    internal static Configuration Of(Machine machine, Rig rig, int taken) =>
        new(
            machine.Id.Value,
            Enumerable
                .Range(0, rig.Options)
                .Where(option => (taken >> option & 1) == 1)
                .ToImmutableSortedDictionary(option => new OptionId($"o{option}"), _ => 1),
            []
        );

    internal static PortPlan RandomPlan(RigFacts facts, Machine machine, Dice dice) =>
        new(
            machine.Instances.ToImmutableSortedDictionary(
                instance => instance.Key,
                instance => new Located<Home>(
                    instance.Fit.Wiring == Wiring.Direct ? Home.Direct : RandomHome(facts, instance, dice),
                    default
                )
            ),
            default
        );

    private static Home RandomHome(RigFacts facts, FitInstance instance, Dice dice)
    {
        var fit = facts.Rig.Fits.Select(fit => fit.Key).ToList().IndexOf(instance.Key.ToString());
        var group = dice.Pick([
            .. facts.Groups.Where((group, i) => group.Class != 'H' || facts.Cable[fit, i] is not null),
        ]);
        return new(new(group.Name), group.First + dice.Below(group.Ports), group.Class == 'A' && dice.Chance(15));
    }
}
