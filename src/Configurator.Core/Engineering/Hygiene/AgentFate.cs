using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>An agent of a step in an area, and what there rules it out.</summary>
internal sealed record AgentFate(Area Area, Agent Agent, IReadOnlyList<WashedPart> RuledOutBy)
{
    public bool IsLeft => RuledOutBy.Count == 0;
}
