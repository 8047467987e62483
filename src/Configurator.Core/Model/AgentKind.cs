namespace Configurator.Core.Model;

/// <summary>Sorts of agents that resistance tables know.</summary>
public enum AgentKind
{
    ChlorinatedAlkaline,
    Caustic,
    Acid,
    Quat,
    Peracetic,
    Hypochlorite,
    HotWater,
}
