using Configurator.Core.Model;

namespace Configurator.Core.Documents;

/// <summary>Which agents may follow each other on one day.</summary>
public sealed partial record SiteWords
{
    public string OneRowADay => Say("One row a day.", "Una fila por día.");

    public string PeraceticIsAcid => Say("Peracetic is an acid.", "El peracético es un ácido.");

    public string OrInTheCircuit => Say(", or acid in the cleaning circuit", ", o ácido en el circuito de limpieza");

    public string OrBetween => Say(" or ", " o ");

    /// <param name="agents">Empty where none is left.</param>
    public string ThenAgents(string agents) =>
        agents.Length > 0 ? Say($"then {agents}", $"después {agents}") : Say("then ask", "después pregunte");

    public string NoAgent(string agent) => Say($"no {agent}", $"nada de {agent}");

    /// <summary>A sort of agent in a word or two.</summary>
    public string DayName(AgentKind kind, bool first = false)
    {
        var name = kind switch
        {
            AgentKind.ChlorinatedAlkaline => Say("chlorinated foam", "espuma clorada"),
            AgentKind.Caustic => Say("caustic foam", "espuma cáustica"),
            AgentKind.Acid => Say("acid foam", "espuma ácida"),
            AgentKind.Quat => Say("quat", "amonio cuaternario"),
            AgentKind.Peracetic => Say("peracetic", "peracético"),
            AgentKind.Hypochlorite => Say("chlorine", "cloro"),
            _ => Say("hot water", "agua caliente"),
        };
        return first ? char.ToUpperInvariant(name[0]) + name[1..] : name;
    }
}
