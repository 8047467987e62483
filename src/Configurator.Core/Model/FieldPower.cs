using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>How the field masters are fed over the trunk: what voltage is reckoned with, and from which
/// circuits.</summary>
/// <param name="Lowest">At the terminals of the box, at its worst.</param>
/// <param name="Conductors">Temperature of the conductors at the hottest place.</param>
/// <param name="Source">Resistance of supply, protection and wiring in the box, out and back.</param>
/// <param name="Reserve">Share of each supply that stays unused.</param>
public sealed record FieldPower(
    Quantity Lowest,
    Quantity Conductors,
    Quantity Source,
    Quantity Reserve,
    ImmutableArray<FieldCircuit> Circuits
);

/// <summary>One pair of conductors of the trunk, with its protection and supply.</summary>
/// <param name="Supply">A standard fit inside the box.</param>
/// <param name="Protection">Rated current of the protective device.</param>
/// <param name="TripsAt">Current at which it opens at once, for certain.</param>
public sealed record FieldCircuit(
    Located<string> Name,
    CircuitUse Feeds,
    Located<string> Supply,
    Quantity Protection,
    Quantity TripsAt
)
{
    /// <summary>Stop functions of the machine that drop it; empty where none does.</summary>
    public ImmutableArray<Located<string>> DroppedBy { get; init; } = [];

    /// <summary>The standard fit whose contacts drop it; null where the machine does not say.</summary>
    public Located<string>? SwitchedBy { get; init; }

    /// <summary>Of the breaker that protects it; null where the machine does not say.</summary>
    public Located<BreakerChannel>? Channel { get; init; }

    /// <summary>It has to live through a stop, so that sensors and communication do.</summary>
    public bool StaysAlive { get; init; }
}

/// <summary>The two supplies of an M12 L-coded trunk: L+ for sensors and communication, 2L+ for actuators.</summary>
public enum CircuitUse
{
    SensorSupply,
    ActuatorSupply,
}
