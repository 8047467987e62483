using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>Binds how the trunk of a machine is fed.</summary>
internal static class FieldPowerBinder
{
    /// <summary>Null where a part of it has a fault.</summary>
    public static FieldPower? Bind(Fields f, ICollection<Diagnostic> report)
    {
        var circuits = Unique.By(
            "circuit",
            f.Records("circuits").Select(Circuit).OfType<FieldCircuit>(),
            circuit => circuit.Name,
            report
        );
        return
            circuits.Length == f.Records("circuits").Length
            && f.Value<Quantity>("lowest") is { } lowest
            && f.Value<Quantity>("conductors") is { } conductors
            && f.Value<Quantity>("source") is { } source
            && f.Value<Quantity>("reserve") is { } reserve
            ? new(lowest, conductors, source, reserve, circuits)
            : null;
    }

    /// <summary>Each circuit names a fit of the standard machine; nothing is said where a fit has no sound
    /// name.</summary>
    public static void FindSupplies(FieldPower? power, Fields machine, ICollection<Diagnostic> report)
    {
        var fits = machine.Records("standard").Select(fit => fit.One<string>("fit")).ToList();
        if (!machine.AreSound("standard") || fits.Contains(null))
        {
            return;
        }

        var names = Names<string>.Of("standard fit", fits.Select(fit => fit!.Value.Value), name => name);
        foreach (var circuit in power?.Circuits ?? [])
        {
            names.Find(circuit.Supply, report);
        }
    }

    private static FieldCircuit? Circuit(Fields f) =>
        f.One<string>("circuit") is { } name
        && f.One<CircuitUse>("feeds") is { } feeds
        && f.One<string>("supply") is { } supply
        && f.Value<Quantity>("protection") is { } protection
        && f.Value<Quantity>("trips-at") is { } trips
            ? new(name, feeds.Value, supply, protection, trips)
            {
                DroppedBy = f.Value<Text>("dropped-by"),
                StaysAlive = f.Value("stays-alive", otherwise: false),
            }
            : null;
}
