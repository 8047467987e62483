using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>What supplies in the box give, for ever and at start-up. The one that feeds sensors also feeds the 24 V
/// devices in the box and those wired to it.</summary>
internal static class SupplyChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, FieldPower power) =>
        BySupply(power).SelectMany(group => OfSupply(fitted, power, group.Key, [.. group]));

    /// <summary>What each supply gives in each order, for the worst of all.</summary>
    public static IEnumerable<WeightedSum> Sums(Machine machine) =>
        machine.Control.Power is { } power
            ? BySupply(power).SelectMany(group => Moments.Select(moment => Sum(machine, Uses(group), moment)))
            : [];

    private static readonly ImmutableArray<SupplyMoment> Moments = [SupplyMoment.Running, SupplyMoment.Starting];

    private static IEnumerable<IGrouping<string, FieldCircuit>> BySupply(FieldPower power) =>
        power.Circuits.GroupBy(circuit => circuit.Supply.Value, StringComparer.Ordinal);

    private static IEnumerable<Finding> OfSupply(
        FittedMachine fitted,
        FieldPower power,
        string name,
        ImmutableArray<FieldCircuit> circuits
    )
    {
        var supply = fitted.Fitted.FirstOrDefault(instance =>
            instance.Option is null && instance.Fit.Name.Value.Value == name
        );
        if (supply is null)
        {
            yield break;
        }

        var span = circuits[0].Supply.Span;
        if (supply.Device.OutputCurrent is not { } output)
        {
            yield return Finding.That(
                PowerRules.Supply,
                name,
                $"`{supply.Device.Id.Value}` does not state what it gives",
                false,
                span
            ) with
            {
                Fix = "state `output-current` of the supply",
            };
            yield break;
        }

        ImmutableArray<CircuitUse> uses = Uses(circuits);
        var drawn = Sum(fitted, uses, SupplyMoment.Running);
        var usable = output.InBase * (100 - power.Reserve.InBase) / 100;
        yield return Finding.AtMost(
            PowerRules.Supply,
            name,
            $"supply `{name}` gives {drawn}, and {output} with a reserve of {power.Reserve} is {(usable / 1000).ToString(2)} A",
            new(new(drawn.Value, 1_000_000), "A"),
            new(usable / 1000, "A"),
            span
        ) with
        {
            Fix = "take a larger supply, or feed one circuit from a supply of its own",
        };
        var starting = Sum(fitted, uses, SupplyMoment.Starting);
        yield return Finding.AtMost(
            PowerRules.StartUp,
            name,
            $"everything on supply `{name}` starting at once draws {starting}",
            new(new(starting.Value, 1_000_000), "A"),
            new((supply.Device.BoostCurrent ?? output).InBase / 1000, "A"),
            span
        ) with
        {
            Fix = "let outputs start one after the other, or take a supply with a larger boost",
        };
    }

    private static ImmutableArray<CircuitUse> Uses(IEnumerable<FieldCircuit> circuits) =>
        [.. circuits.Select(circuit => circuit.Feeds).Distinct()];

    private static WeightedSum Sum(Machine machine, ImmutableArray<CircuitUse> uses, SupplyMoment moment) =>
        new(
            0,
            [
                .. FitSums.Terms(
                    moment
                        .Drawn(FitConditions.Sound(machine), uses)
                        .Select(drawn => (drawn.Instance, drawn.Current.Value))
                ),
                .. moment
                    .Drawn(machine.Control.Masters, uses)
                    .Select(drawn => new WeightedTerm(FitConditions.Of(machine, drawn.Master), drawn.Current.Value)),
            ]
        );

    private static Microamperes Sum(FittedMachine fitted, ImmutableArray<CircuitUse> uses, SupplyMoment moment) =>
        Microamperes.Sum(moment.Drawn(fitted.Fitted, uses).Select(drawn => drawn.Current))
        + Microamperes.Sum(moment.Drawn(fitted.Masters, uses).Select(drawn => drawn.Current));
}
