using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Does every washed part bear at least one agent of each step of its area?</summary>
internal static class MaterialChecks
{
    public static Finding Of(FittedMachine fitted, WashedPart part)
    {
        var unknown = Unknown(part);
        var lost = LostSteps(fitted, part).ToList();
        var avoided = Attacks(fitted, part).Where(attack => attack.Resistance.Rating == Rating.Avoid).ToList();
        var materials = part.Materials.IsEmpty ? "no materials stated" : string.Join(", ", part.Materials);
        return new(
            HygieneRules.Materials,
            part.About,
            $"{part.Name} in area `{part.Area.Id.Value}` has {materials}" + Result(part, unknown, lost, avoided),
            lost.Count > 0 ? Verdict.Fail
                : unknown.IsEmpty && !part.Materials.IsEmpty ? Verdict.Pass
                : Verdict.Unstated,
            part.Span
        )
        {
            Details =
            [
                part.Device?.Id.Value.Value ?? part.About,
                part.Area.Id.Value.Value,
                Asked(fitted, part.Area),
                materials,
            ],
        };
    }

    private static string Asked(FittedMachine fitted, Area area) =>
        Washing.Steps(fitted, area).SelectMany(step => step.Agents).Select(agent => agent.Id.Value).ToList() switch
        {
            [] => "water alone",
            var agents => string.Join(", ", agents),
        };

    /// <summary>Steps whose agents all harm it.</summary>
    public static IEnumerable<CleaningStep> LostSteps(FittedMachine fitted, WashedPart part) =>
        Washing
            .Steps(fitted, part.Area)
            .Where(step => step.Agents.All(agent => IsAvoided(part, agent.Kind)))
            .Select(step => step.Step);

    public static bool IsAvoided(WashedPart part, AgentKind agent) => WorstOf(part, agent)?.Rating == Rating.Avoid;

    /// <summary>What each agent of its area does to it; materials that nobody rates are left out.</summary>
    public static IEnumerable<Attack> Attacks(FittedMachine fitted, WashedPart part) =>
        Washing
            .Steps(fitted, part.Area)
            .SelectMany(step => step.Agents)
            .Select(agent =>
                part
                    .Materials.Select(material => (material, Of: ResistanceTable.Of(material, agent.Kind)))
                    .Where(pair => pair.Of is not null)
                    .OrderByDescending(pair => pair.Of!.Rating)
                    .FirstOrDefault()
                    is { Of: { } worst } found
                    ? new Attack(agent, found.material, worst)
                    : null
            )
            .OfType<Attack>();

    public static ImmutableArray<string> Unknown(WashedPart part) =>
        [.. part.Materials.Where(material => ResistanceTable.Of(material, AgentKind.Caustic) is null)];

    private static Resistance? WorstOf(WashedPart part, AgentKind agent) =>
        part
            .Materials.Select(material => ResistanceTable.Of(material, agent))
            .OfType<Resistance>()
            .MaxBy(found => found.Rating);

    private static string Result(
        WashedPart part,
        ImmutableArray<string> unknown,
        List<CleaningStep> lost,
        List<Attack> avoided
    ) =>
        lost.Count > 0
            ? $": no agent of {string.Join(" and ", lost.Select(step => $"`{HygieneWords.Of(step)}`"))} suits it: "
                + string.Join("; ", avoided.Where(attack => lost.Contains(attack.Agent.Step)).Select(a => a.Text))
        : part.Materials.IsEmpty ? ": whether agents harm it is unstated"
        : !unknown.IsEmpty ? $": the table of resistance has no {string.Join(", ", unknown)}"
        : avoided.Count > 0 ? $": rules out {string.Join("; ", avoided.Select(attack => attack.Text))}"
        : ": bears every agent of its area at the stated strength, temperature and time";
}
