using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Power;

/// <summary>Volts lost on the way to one master as a load: what each fit adds, with the trunk as it is with every
/// extension mounted. Source: CON-03.</summary>
internal static class TrunkDrops
{
    private const string Id = "drop-";

    private const int Microvolts = 1_000_000;

    /// <summary>One for each circuit and master.</summary>
    public static IEnumerable<Load> Of(Machine machine) =>
        machine.Control.Power is { } power
            ? power.Circuits.SelectMany(circuit => machine.Control.Masters.Select(master => Of(circuit, master)))
            : [];

    public static bool IsDrop(Load load) => load.Id.StartsWith(Id, StringComparison.Ordinal);

    /// <summary>In microvolts.</summary>
    public static IEnumerable<WeightedTerm> Terms(Machine machine, Load load)
    {
        var feed = TrunkFeed.Of(machine.Control.Power!, machine, machine.Control.Masters);
        var (use, at) = machine
            .Control.Power!.Circuits.SelectMany(circuit => feed.Masters.Select((master, i) => (circuit, master, i)))
            .Where(place => IdOf(place.circuit, place.master) == load.Id)
            .Select(place => (place.circuit.Feeds, place.i))
            .First();
        return TrunkSums.Drops(feed, TrunkSums.Draws(machine, feed.Masters, use), at, Microvolts);
    }

    private static string IdOf(FieldCircuit circuit, Master master) => $"{Id}{circuit.Name.Value}-{master.Name.Value}";

    private static Load Of(FieldCircuit circuit, Master master) =>
        new(
            IdOf(circuit, master),
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
            Microvolts
        );
}
