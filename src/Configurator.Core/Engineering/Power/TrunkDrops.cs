using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Volts lost on the way to one master as a load: what each fit adds, with the trunk as it is with every
/// extension mounted. Source: CON-03.</summary>
internal static class TrunkDrops
{
    private const string Id = "drop-";

    /// <summary>One for each circuit and master.</summary>
    public static IEnumerable<Load> Of(Machine machine) =>
        machine.Control.Power is { } power
            ? power.Circuits.SelectMany(circuit => machine.Control.Masters.Select(master => Of(circuit, master)))
            : [];

    public static bool IsDrop(Load load) => load.Id.StartsWith(Id, StringComparison.Ordinal);

    /// <summary>In microvolts, each rounded up.</summary>
    public static IEnumerable<WeightedTerm> Terms(Machine machine, Load load)
    {
        var power = machine.Control.Power!;
        var masters = machine.Control.Masters;
        var loops = TrunkFeed.Of(power, machine, masters).LoopOhm;
        var (circuit, at) = power
            .Circuits.SelectMany(circuit =>
                masters.Select((master, i) => (Circuit: circuit, At: i, Load: Of(circuit, master)))
            )
            .Where(place => place.Load.Id == load.Id)
            .Select(place => (place.Circuit, place.At))
            .First();
        for (var tap = 0; tap < masters.Length; tap++)
        {
            var shared = loops[Math.Min(tap, at)];
            yield return new(
                FitConditions.Of(machine, masters[tap]),
                Microvolts(TapLoads.Own(masters[tap], circuit.Feeds).At(PowerRules.MasterMin(circuit.Feeds)), shared)
            );
            foreach (var instance in TrunkSums.Behind(machine, masters[tap].Name.Value))
            {
                var amperes = TapLoads.Of(instance, circuit.Feeds).At(PowerRules.DeviceMin(circuit.Feeds));
                yield return new(FitConditions.Of(instance), Microvolts(amperes, shared));
            }
        }
    }

    private static Load Of(FieldCircuit circuit, Master master) =>
        new(
            $"{Id}{circuit.Name.Value}-{master.Name.Value}",
            Text.Of([
                new(
                    "en",
                    $"Volts lost by {circuit.Name.Value} on the way to {master.Name.Value}, with every extension"
                ),
                new(
                    "es",
                    $"Voltios perdidos por {circuit.Name.Value} hasta {master.Name.Value}, con todas las ampliaciones"
                ),
            ]),
            "V",
            1_000_000
        );

    private static long Microvolts(Rational amperes, Rational ohm) =>
        (long)System.Numerics.BigInteger.Min((amperes * ohm * 1_000_000).Ceiling(), TrunkSums.Most);
}
