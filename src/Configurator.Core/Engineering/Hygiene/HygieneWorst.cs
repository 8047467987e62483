using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>
/// Conditions on the order under which washing is at its worst. Where every one that can hold has a configuration in
/// which it does, and all of these pass, no other configuration can fail.
/// </summary>
internal static class HygieneWorst
{
    public static IEnumerable<Condition> Of(Machine machine)
    {
        if (machine.Sanitation is null)
        {
            return [];
        }

        var parts = WashedParts.Of(machine, machine.Plan);
        return parts
            .SelectMany(part => Severe(machine, part).Concat(Harmed(machine, part)))
            .Concat(machine.Areas.SelectMany(area => Empty(machine, area, parts)))
            .DistinctBy(Logic.ConditionKey.Of, StringComparer.Ordinal);
    }

    /// <summary>It is mounted, and its area is washed more severely than usual: markings fail there if anywhere, for
    /// a method asks for all that a milder one does.</summary>
    private static IEnumerable<Condition> Severe(Machine machine, WashedPart part) =>
        Washing.Changes(machine, part.Area).Select(change => All(part.When, change.When));

    /// <summary>It is mounted, and all agents of some step harm it.</summary>
    private static IEnumerable<Condition> Harmed(Machine machine, WashedPart part) =>
        Steps(machine, part.Area)
            .Select(agents => agents.ToLookup(agent => MaterialChecks.IsAvoided(part, agent.Kind)))
            .Where(agents => agents[true].Any() && agents[false].All(agent => agent.When is not null))
            .Select(agents =>
                All([part.When, Any(agents[true].Select(When)), .. agents[false].Select(agent => Not(agent.When!))])
            );

    /// <summary>Some agent of a step is used, and each that is harms something mounted.</summary>
    private static IEnumerable<Condition> Empty(Machine machine, Area area, ImmutableArray<WashedPart> parts)
    {
        var here = parts.Where(part => part.Area.Id.Value == area.Id.Value).ToList();
        foreach (var agents in Steps(machine, area))
        {
            ImmutableArray<ImmutableArray<Condition>> lost =
            [
                .. agents.Select(agent => Lost(agent, here.Where(part => MaterialChecks.IsAvoided(part, agent.Kind)))),
            ];
            if (lost.All(ways => !ways.IsEmpty))
            {
                yield return All([Any(agents.Select(When)), .. lost.Select(ways => Any(ways))]);
            }
        }
    }

    /// <summary>Ways in which an agent is of no use: it is not used, or something mounted does not bear it.</summary>
    private static ImmutableArray<Condition> Lost(Agent agent, IEnumerable<WashedPart> harmed) =>
        [.. agent.When is { } when ? [Not(when)] : Array.Empty<Condition>(), .. harmed.Select(part => part.When)];

    private static IEnumerable<ImmutableArray<Agent>> Steps(Machine machine, Area area) =>
        CleaningSteps.Locked.Select(step => Washing.Agents(machine, area, step)).Where(agents => !agents.IsEmpty);

    private static Condition When(Agent agent) => agent.When ?? FitConditions.Always;

    private static NoneOf Not(Condition condition) => new([condition], condition.Span);

    private static AllOf All(params ImmutableArray<Condition> parts) => new(parts, default);

    private static Condition Any(IEnumerable<Condition> parts)
    {
        ImmutableArray<Condition> each = [.. parts.DistinctBy(Logic.ConditionKey.Of, StringComparer.Ordinal)];
        return each.Any(one => one is AllOf { Of.IsEmpty: true }) ? FitConditions.Always : new AnyOf(each, default);
    }
}
