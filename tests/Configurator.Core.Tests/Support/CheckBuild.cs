using System.Globalization;
using Configurator.Core.Engineering;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Support;

/// <summary>A machine of a catalogue built to an order, and what its engineering comes to.</summary>
internal static class CheckBuild
{
    /// <summary>Options by id, or <c>2 x heads</c> for more than one.</summary>
    public static Order OrderOf(params string[] picks)
    {
        var counts = picks.Select(pick => pick.Split(" x ")).Select(parts => new OptionQuantity(
            new(parts[^1]), parts.Length > 1 ? int.Parse(parts[0], CultureInfo.InvariantCulture) : 1)).ToList();
        return Order.Of(SmallCatalogue.MachineId, counts.Select(count => count.Option), counts);
    }

    public static EngineeringReport Built(this Check check, params string[] picks) => Built(check.TheMachine, picks);

    public static EngineeringReport Built(Machine machine, params string[] picks) => Built(machine, machine.Plan, picks);

    public static EngineeringReport Built(Machine machine, PortPlan pins, params string[] picks) =>
        Engineer.Compute(machine, Completion.Complete(machine, OrderOf(picks)), pins);

    /// <summary>The finding with that id, as <c>Pass: 7.5 m of 20 m, margin 12.5 m</c>, or the verdict alone.</summary>
    public static string Found(this EngineeringReport report, string id)
    {
        var finding = Assert.Single(report.Findings, finding => finding.Id == id);
        return finding is { Value: { } value, Limit: { } limit, Margin: { } margin }
            ? $"{finding.Verdict}: {value} of {limit}, margin {margin}"
            : finding.Verdict.ToString();
    }

    /// <summary>Ids of what failed, in order.</summary>
    public static string Failed(this EngineeringReport report) =>
        string.Join(' ', report.Findings.Where(finding => finding.Verdict == Verdict.Fail).Select(finding => finding.Id));
}
