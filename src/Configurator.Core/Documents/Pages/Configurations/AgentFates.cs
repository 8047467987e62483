using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Agents of a machine as built, and how they are used, as pages say it.</summary>
internal static class AgentFates
{
    public static IEnumerable<AgentFate> Of(FittedMachine fitted) =>
        fitted.Machine.Sanitation is null ? [] : AgentChecks.Fates(fitted, WashedParts.On(fitted));

    public static string Print(ConfigurationContext context, Agent agent) =>
        string.Join(
            ", ",
            new[] { agent.Concentration, agent.Temperature, agent.Contact }
                .OfType<Quantity>()
                .Select(quantity => context.Documents.Print(quantity))
        );
}
