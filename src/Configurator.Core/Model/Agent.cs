using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>A cleaning agent that the machine is laid out for, as used: one of several that may do a step.</summary>
/// <param name="Concentration">In use, by mass; null for water.</param>
/// <param name="Contact">Null where it does not stay on.</param>
public sealed record Agent(
    Located<string> Id,
    Text Title,
    AgentKind Kind,
    CleaningStep Step,
    Quantity? Concentration,
    Quantity Temperature,
    Quantity? Contact,
    ImmutableArray<AreaId> Areas
)
{
    /// <summary>Used only where this holds; null for always.</summary>
    public Condition? When { get; init; }
}
