namespace Configurator.Core.Logic.Weighing;

/// <summary>What a search under several limits came to.</summary>
/// <param name="Found">Null where no configuration keeps the limits.</param>
/// <param name="IsSettled">False where the search was cut short before it found any: then there may be one.</param>
public sealed record Sought(Extreme? Found, bool IsSettled);
