using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How an area is washed, and with what, on a machine built to an order.</summary>
internal static class Washing
{
    /// <summary>Every part of an area asks for its agents: found once for each machine that is built.</summary>
    private static readonly ConditionalWeakTable<
        FittedMachine,
        ConcurrentDictionary<AreaId, ImmutableArray<(CleaningStep, ImmutableArray<Agent>)>>
    > Known = [];

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
        [.. machine.Sanitation?.Agents.Where(agent => agent.Step == step && agent.Areas.Contains(area.Id.Value)) ?? []];

    /// <summary>Steps in which agents come into an area of a machine so built, with those agents.</summary>
    public static ImmutableArray<(CleaningStep Step, ImmutableArray<Agent> Agents)> Steps(
        FittedMachine fitted,
        Area area
    ) => Known.GetOrCreateValue(fitted).GetOrAdd(area.Id.Value, _ => [.. Compute(fitted, area)]);

    private static IEnumerable<(CleaningStep, ImmutableArray<Agent>)> Compute(FittedMachine fitted, Area area) =>
        CleaningSteps.Locked.Select(step => (step, Agents(fitted, area, step))).Where(step => !step.Item2.IsEmpty);

    private static ImmutableArray<Agent> Agents(FittedMachine fitted, Area area, CleaningStep step) =>
        [
            .. Agents(fitted.Machine, area, step)
                .Where(agent => agent.When?.Holds(fitted.Configuration.QuantityOf) ?? true),
        ];
}
