using System.Collections.Immutable;
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

    /// <summary>Each circuit names a fit of the standard machine.</summary>
    public static void FindSupplies(FieldPower? power, ImmutableArray<Fit> standard, ICollection<Diagnostic> report)
    {
        var names = Names<Fit>.Of("standard fit", standard, fit => fit.Name.Value.Value);
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
