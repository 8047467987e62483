using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How an area is washed, and with what, on a machine built to an order.</summary>
internal static class Washing
{
    /// <summary>As the area says, or in the most severe way of all changes that hold.</summary>
    public static WashMethod MethodIn(Machine machine, Area area, Func<OptionId, int> quantityOf) =>
        Changes(machine, area)
            .Where(change => change.When.Holds(quantityOf))
            .Select(change => change.Wash)
            .Append(area.Wash)
            .Max();

    /// <summary>What can make an area be washed more severely.</summary>
    public static IEnumerable<WashChange> Changes(Machine machine, Area area) =>
        machine.Sanitation?.Changes.Where(change => change.Areas.Contains(area.Id.Value) && change.Wash > area.Wash)
        ?? [];

    /// <summary>Agents that can come into an area at a step.</summary>
    public static ImmutableArray<Agent> Agents(Machine machine, Area area, CleaningStep step) =>
        [
            .. machine.Sanitation?.Agents.Where(agent => agent.Step == step && agent.Areas.Contains(area.Id.Value))
                ?? [],
        ];

    /// <summary>Those of them that do on a machine so built.</summary>
    public static ImmutableArray<Agent> Agents(
        Machine machine,
        Area area,
        CleaningStep step,
        Func<OptionId, int> quantityOf
    ) => [.. Agents(machine, area, step).Where(agent => agent.When?.Holds(quantityOf) ?? true)];
}
