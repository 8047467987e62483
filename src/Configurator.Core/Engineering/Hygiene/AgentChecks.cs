using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Which agents suit everything fitted in an area: what is left when each part has ruled out what harms
/// it.</summary>
internal static class AgentChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, IReadOnlyList<WashedPart> parts) =>
        [
            .. fitted.Machine.Areas.SelectMany(area => Left(fitted, area, parts)),
            .. fitted
                .Machine.Sanitation!.Agents.Where(agent => agent.When?.Holds(fitted.Configuration.QuantityOf) ?? true)
                .Select(Strength),
        ];

    /// <summary>Each agent of each area, in the order of steps, with what rules it out.</summary>
    public static IEnumerable<AgentFate> Fates(FittedMachine fitted, IReadOnlyList<WashedPart> parts) =>
        fitted.Machine.Areas.SelectMany(area =>
            Washing.Steps(fitted, area).SelectMany(step => step.Agents).Select(agent => FateOf(area, agent, parts))
        );

    private static AgentFate FateOf(Area area, Agent agent, IReadOnlyList<WashedPart> parts) =>
        new(
            area,
            agent,
            [.. parts.Where(part => part.Area.Id.Value == area.Id.Value && MaterialChecks.IsAvoided(part, agent.Kind))]
        );

    /// <summary>A part that bears none of a step's agents is reported by itself; the step is then not judged.</summary>
    private static IEnumerable<Finding> Left(FittedMachine fitted, Area area, IReadOnlyList<WashedPart> parts)
    {
        var here = parts.Where(part => part.Area.Id.Value == area.Id.Value).ToList();
        foreach (var (step, agents) in Washing.Steps(fitted, area))
        {
            if (here.Exists(part => agents.All(agent => MaterialChecks.IsAvoided(part, agent.Kind))))
            {
                continue;
            }

            yield return Left(fitted, area, step, [.. agents.Select(agent => FateOf(area, agent, here))]);
        }
    }

    private static Finding Left(FittedMachine fitted, Area area, CleaningStep step, List<AgentFate> fates)
    {
        var left = fates.Where(fate => fate.IsLeft).Select(fate => $"`{fate.Agent.Id.Value}`").ToList();
        var lost = fates
            .Where(fate => !fate.IsLeft)
            .Select(fate =>
                $"`{fate.Agent.Id.Value}` is ruled out by "
                + string.Join(", ", fate.RuledOutBy.Select(part => part.Name))
            );
        return Finding.AtLeast(
            HygieneRules.Agents,
            $"{area.Id.Value}/{HygieneWords.Of(step)}",
            $"in area `{area.Id.Value}` {(left.Count == 0 ? "no agent" : string.Join(" and ", left))} of"
                + $" `{HygieneWords.Of(step)}` suits everything fitted"
                + string.Concat(lost.Select(text => $"; {text}")),
            Measure.Count(left.Count),
            Measure.Count(1),
            fitted.Machine.Sanitation!.Span
        ) with
        {
            // How many are left at the least over all orders is not proved, only whether any is.
            Margin = null,
            Fix = "add an agent that suits all of it, or take a device of other materials",
            Details = ["", area.Id.Value.Value, HygieneWords.Of(step), string.Join(", ", left).Replace("`", "")],
        };
    }

    private static Finding Strength(Agent agent)
    {
        var beyond = AgentStrengths.Beyond(agent).ToList();
        return new(
            HygieneRules.Strength,
            agent.Id.Value,
            $"`{agent.Id.Value}` is used at {Used(agent)}"
                + (beyond.Count == 0 ? "" : $": {string.Join(" and ", beyond)}, which ratings do not cover"),
            beyond.Count == 0 ? Verdict.Pass : Verdict.Review,
            agent.Id.Span
        )
        {
            Fix = "use it as usual, or have its maker confirm it for the materials fitted and accept the finding",
        };
    }

    private static string Used(Agent agent) =>
        string.Join(", ", new[] { agent.Concentration, agent.Temperature, agent.Contact }.OfType<Quantity>());
}
