using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Engineering.Loads;

/// <summary>The least and the most that a load comes to over all configurations of a machine.</summary>
/// <param name="Sum">In the load's small unit, for the homes of the port plan.</param>
public sealed record WorstCase(Load Load, WeightedSum Sum, Extreme Lightest, Extreme Heaviest);
