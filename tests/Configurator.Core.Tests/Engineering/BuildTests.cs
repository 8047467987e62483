using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using CsCheck;
using Check = Configurator.Core.Tests.Support.Check;
using CheckBuild = Configurator.Core.Tests.Support.CheckBuild;

namespace Configurator.Core.Tests.Engineering;

/// <summary>What is mounted on a machine built to an order, and laws that hold for every order.</summary>
public class BuildTests
{
    private static readonly Machine CupOne = Check.Small.TheMachine;

    private static readonly ImmutableArray<string> Options = ["film", "precut", "cup-check", "heads", "counter", "agitator"];

    /// <summary>How often each option is taken.</summary>
    private static readonly Gen<int[]> Counts = Gen.Int[0, 2].Array[Options.Length];

    private static readonly Gen<string[]> Orders = Counts.Select(PicksOf);

    [Theory]
    [InlineData("cup-check", "front")]
    [InlineData("heads", "front")]
    [InlineData("2 x heads", "front extra")]
    public void An_extension_is_fitted_when_something_is_at_home_there(string pick, string masters) =>
        Assert.Equal(masters, string.Join(' ', CheckBuild.Built(CupOne, pick).Fitted.Masters.Select(master => master.Name.Value)));

    [Theory]
    [InlineData("heads", "heads/dose-valve/1 standard/guard/1")]
    [InlineData("2 x heads", "heads/dose-valve/1 heads/dose-valve/2 standard/guard/1")]
    [InlineData("agitator", "agitator/stirrer/1 standard/guard/1")]
    [InlineData("film", "standard/guard/1")]
    public void Instances_come_with_their_option_and_in_its_number(string pick, string fitted) =>
        Assert.Equal(fitted, string.Join(' ', CheckBuild.Built(CupOne, pick).Fitted.Fitted.Select(instance => instance.Key)));

    [Fact]
    public void A_fit_with_a_condition_is_mounted_where_it_holds()
    {
        var check = Check.Small.Changing("options/small/agitator.yaml", "wiring: inside", "wiring: inside, when: {option: heads, at-least: 2}");
        Assert.DoesNotContain("agitator/stirrer/1", Keys(check.TheMachine, "agitator", "heads"));
        Assert.Contains("agitator/stirrer/1", Keys(check.TheMachine, "agitator", "2 x heads"));
    }

    [Fact]
    public void Homes_given_explicitly_hold_instead_of_the_plan()
    {
        var key = InstanceKey.Parse("cup-check/cup-eye/1")!.Value;
        var pins = CupOne.Plan with { Homes = CupOne.Plan.Homes.SetItem(key, new(Home.Parse("extra:1")!.Value, default)) };
        var report = CheckBuild.Built(CupOne, pins, "cup-check");
        Assert.Equal(["front", "extra"], report.Fitted.Masters.Select(master => master.Name.Value.Value));
        Assert.Contains(report.Findings, finding => finding.Id == "ports.port-current/extra:1");
        Assert.DoesNotContain(report.Findings, finding => finding.Id == "ports.port-current/front:1");
    }

    // Law: what is added to an order adds to what was there.
    [Fact]
    public void Adding_an_option_never_lowers_a_sum() => Gen.Select(Counts, Gen.Int[0, Options.Length - 1]).Sample((counts, more) =>
    {
        int[] added = [.. counts];
        added[more]++;
        var sums = Sums(CheckBuild.Built(CupOne, PicksOf(added)));
        return Sums(CheckBuild.Built(CupOne, PicksOf(counts))).All(sum => sums[sum.Key] >= sum.Value);
    });

    // Law: a device is called the same in every order.
    [Fact]
    public void Nothing_is_called_otherwise_because_something_else_is_fitted() => Gen.Select(Orders, Orders).Sample((one, other) =>
    {
        var names = Names(one);
        return Names(other).All(name => !names.TryGetValue(name.Key, out var called) || called == name.Value);
    });

    [Fact]
    public void A_name_comes_from_its_fit_and_its_class()
    {
        Assert.Equal("=DOSEVALVE-QM2", Names(["2 x heads"])["heads/dose-valve/2"]);
        Assert.Equal("=CUPEYE-BX1", Names(["cup-check"])["cup-check/cup-eye/1"]);
    }

    [Fact]
    public void The_order_of_the_picks_changes_nothing() => Orders.Sample(order =>
        CheckBuild.Built(CupOne, order).Findings.SequenceEqual(CheckBuild.Built(CupOne, [.. order.Reverse()]).Findings));

    private static string[] PicksOf(int[] counts) =>
        [.. Options.Zip(counts).Where(pick => pick.Second > 0).Select(pick => FormattableString.Invariant($"{pick.Second} x {pick.First}"))];

    private static IEnumerable<string> Keys(Machine machine, params string[] picks) =>
        CheckBuild.Built(machine, picks).Fitted.Fitted.Select(instance => instance.Key.ToString());

    private static ImmutableDictionary<string, Core.Model.Units.Rational> Sums(EngineeringReport report) => report.Findings
        .Where(finding => finding.Rule.Name is "ports.master-current" or "ports.master-extra" or "ports.port-current" or "box.entries" or "box.direct-inputs")
        .ToImmutableDictionary(finding => finding.Id, finding => finding.Value!.Value.Value);

    private static ImmutableDictionary<string, string> Names(string[] picks) => CheckBuild.Built(CupOne, picks).Fitted.Fitted
        .ToImmutableDictionary(instance => instance.Key.ToString(), new Designations(DesignationStyle.Iec81346).Of);
}
