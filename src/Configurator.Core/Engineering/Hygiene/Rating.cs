namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How a material bears an agent, from best to worst.</summary>
public enum Rating
{
    Good,

    /// <summary>Keep to time and strength, rinse well.</summary>
    Limited,
    Avoid,
}
