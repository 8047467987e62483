using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

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

    /// <summary>Supplies, breakers and what drops a circuit are fits of the standard machine; nothing is said where a
    /// fit has no sound name.</summary>
    public static void FindParts(ControlArchitecture? control, Fields machine, ICollection<Diagnostic> report)
    {
        var fits = machine.Records("standard").Select(fit => fit.One<string>("fit")).ToList();
        if (!machine.AreSound("standard") || fits.Contains(null))
        {
            return;
        }

        var names = Names<string>.Of("standard fit", fits.Select(fit => fit!.Value.Value), name => name);
        foreach (var name in control is null ? [] : NamedParts(control))
        {
            names.Find(name, report);
        }
    }

    private static IEnumerable<Located<string>> NamedParts(ControlArchitecture control) =>
        (control.Power?.Circuits ?? [])
            .SelectMany(circuit =>
                new Located<string>?[] { circuit.Supply, circuit.SwitchedBy, FitOf(circuit.Channel) }
            )
            .Append(FitOf(control.Box.Channel))
            .Append(FitOf(control.Box.InsideChannel))
            .Append(control.Box.Network?.Switch)
            .Append(control.Box.Safety?.Controller)
            .Append(control.Box.Safety?.TorqueOff)
            .OfType<Located<string>>();

    private static Located<string>? FitOf(Located<BreakerChannel>? channel) => channel?.Select(at => at.Fit.Value);

    private static FieldCircuit? Circuit(Fields f) =>
        f.One<string>("circuit") is { } name
        && f.One<CircuitUse>("feeds") is { } feeds
        && f.One<string>("supply") is { } supply
        && f.Value<Quantity>("protection") is { } protection
        && f.Value<Quantity>("trips-at") is { } trips
            ? new(name, feeds.Value, supply, protection, trips)
            {
                DroppedBy = f.Many<string>("dropped-by"),
                SwitchedBy = f.One<string>("switched-by"),
                Channel = f.One<string>("channel")?.Select(BreakerChannel.Parse),
                StaysAlive = f.Value("stays-alive", otherwise: false),
            }
            : null;
}
