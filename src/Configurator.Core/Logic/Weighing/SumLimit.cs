namespace Configurator.Core.Logic.Weighing;

/// <summary>A sum that may not come to more.</summary>
public sealed record SumLimit(WeightedSum Sum, long AtMost);
