using System.Numerics;

namespace Configurator.Core.Logic.Weighing;

/// <summary>Configurations over a limit.</summary>
/// <param name="Configurations">Null where not computed.</param>
/// <param name="Example">The heaviest one; null where none is over.</param>
public sealed record OverLimit(long Limit, BigInteger? Configurations, Extreme? Example);
