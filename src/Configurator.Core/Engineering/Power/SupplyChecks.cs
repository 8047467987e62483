using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>What supplies in the box give, for ever and at start-up. The one that feeds sensors also feeds the 24 V
/// devices in the box and those wired to it.</summary>
internal static class SupplyChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, FieldPower power) =>
        power
            .Circuits.GroupBy(circuit => circuit.Supply.Value, StringComparer.Ordinal)
            .SelectMany(group => OfSupply(fitted, power, group.First().Supply.Value, [.. group]));

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

        var drawn = Sum(
            fitted,
            circuits,
            (instance, use) => TapLoads.Current(instance, use),
            master => master.Device.Current
        );
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
        var starting = Sum(fitted, circuits, StartUp, master => master.Device.StartUpCurrent ?? master.Device.Current);
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

    private static Microamperes Sum(
        FittedMachine fitted,
        ImmutableArray<FieldCircuit> circuits,
        Func<FitInstance, CircuitUse, Microamperes> current,
        Func<Master, Quantity?> own
    )
    {
        var sum = Microamperes.Zero;
        foreach (var use in circuits.Select(circuit => circuit.Feeds).Distinct())
        {
            sum += Microamperes.Sum(
                fitted
                    .Fitted.Where(instance => use == CircuitUse.SensorSupply || instance.Fit.Wiring == Wiring.Port)
                    .Select(instance => current(instance, use))
            );
            sum +=
                use == CircuitUse.SensorSupply
                    ? Microamperes.Sum(fitted.Masters.Select(own).OfType<Quantity>().Select(Microamperes.From))
                    : Microamperes.Zero;
        }

        return sum;
    }

    public static Microamperes StartUp(FitInstance instance, CircuitUse use) =>
        use == CircuitUse.SensorSupply && instance.Device.StartUpCurrent is { } peak
            ? Microamperes.From(peak)
            : TapLoads.Current(instance, use);
}
