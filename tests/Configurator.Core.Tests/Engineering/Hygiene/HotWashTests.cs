using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Hygiene;

/// <summary>The hot-wash upgrade on the demonstration machines: with their rules every order holds, without one of them
/// the proof finds the order that does not.</summary>
public class HotWashTests
{
    public static TheoryData<string> Machines { get; } = ["pantry-eight", "pantry-four", "spout-two"];

    [Theory]
    [MemberData(nameof(Machines))]
    public void Every_part_bears_the_most_severe_washing_that_any_order_brings(string machine)
    {
        var report = AllOrdersProof.Of(OrderLogic.Of(Demo(machine)));

        Assert.Contains(report.Washed, part => part.Method == WashMethod.HotHighPressure);
        Assert.All(report.Washed, part => Assert.Equal(Core.Engineering.Hygiene.Shown.Yes, part.Shown));
        Assert.DoesNotContain(report.Findings, worst => worst.Finding.IsOpen);
    }

    // Source: the reasons that the rules give: these devices were not tested for hot high-pressure jets. What can never be
    // ordered together may share an input of the box; without the rule that fails too.
    [Theory]
    [InlineData("checkweigher", "checkweigher/")]
    [InlineData("ink-coding", "ink-coding/")]
    [InlineData("fume-extraction", "fume-extraction/|laser-coding/")]
    public void Without_the_rule_that_keeps_an_option_from_the_upgrade_its_devices_fail(string other, string source)
    {
        var report = AllOrdersProof.Of(OrderLogic.Of(Allowing(Demo("pantry-four"), other)));

        var failed = report.Findings.Where(worst => worst.Finding.IsOpen && worst.Finding.Rule != BoxPointChecks.Taken).ToList();
        Assert.NotEmpty(failed);
        Assert.All(failed, worst =>
        {
            Assert.Matches($"^hygiene.ingress/({source})", worst.Finding.Id);
            Assert.Contains("needs IP66 and IP69 or IP69K", worst.Finding.Statement, StringComparison.Ordinal);
            Assert.Equal(1, worst.Configuration.QuantityOf(new("hot-wash-upgrade")));
            Assert.True(worst.IsProved);
        });
    }

    private static Machine Demo(string id) => DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == id);

    /// <summary>The machine without the rule of the upgrade against that option, fits and all.</summary>
    private static Machine Allowing(Machine machine, string other)
    {
        var upgrade = machine.Options[new("hot-wash-upgrade")];
        return machine with
        {
            Options = machine.Options.SetItem(
                new("hot-wash-upgrade"),
                upgrade with { NotWith = [.. upgrade.NotWith.Where(link => link.Other.Value != new OptionId(other))] }),
        };
    }
}
