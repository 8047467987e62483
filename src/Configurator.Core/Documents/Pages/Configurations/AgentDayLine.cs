using System.Collections.Immutable;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Which agents may follow each other on one day, in one line, from the agents that are left.</summary>
internal static class AgentDayLine
{
    public static ImmutableArray<string> Of(ConfigurationContext context)
    {
        var circuit = SanitationFacts.Has(context.Fitted, Hazard.CleaningCircuit);
        var used = AgentFates.Of(context.Fitted).Where(fate => fate.IsLeft).Select(fate => fate.Agent.Kind).ToHashSet();
        if (circuit)
        {
            used.Add(AgentKind.Acid);
        }

        var rows = AgentDays.Of(used).Select(day => Row(context.Words, day, circuit)).ToList();
        if (rows.Count == 0)
        {
            return [];
        }

        var last = used.Contains(AgentKind.Peracetic) ? $" {context.Words.PeraceticIsAcid}" : "";
        return [$"{context.Words.OneRowADay} {string.Join(" ", rows)}{last}"];
    }

    private static string Row(SiteWords words, AgentDay day, bool circuit)
    {
        var cleaner =
            words.DayName(day.Cleaner, first: true)
            + (circuit && day.Cleaner == AgentKind.Acid ? words.OrInTheCircuit : "");
        var then = string.Join(words.OrBetween, day.Then.Select(kind => words.DayName(kind)));
        var never = string.Join(", ", day.Never.Select(kind => words.NoAgent(words.DayName(kind))));
        return $"{cleaner}: {string.Join("; ", new[] { words.ThenAgents(then), never }.Where(part => part.Length > 0))}.";
    }
}
