namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How a material bears an agent, from best to worst.</summary>
public enum Rating
{
    Good,

    /// <summary>Keep to time and strength, rinse well.</summary>
    Limited,
    Avoid,
}

/// <summary>One cell of a resistance table, with how sure it is.</summary>
public sealed record Resistance(Rating Rating, Basis Basis, string Note);
