namespace Configurator.Core.Engineering.Hygiene;

/// <summary>One cell of a resistance table, with how sure it is.</summary>
public sealed record Resistance(Rating Rating, Basis Basis, string Note);
