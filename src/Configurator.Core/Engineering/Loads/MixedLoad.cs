using System.Collections.Immutable;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>A load over configurations, each counted by the declared order mix of the machine.</summary>
/// <param name="Mean">Null where not computed, or where the mix leaves nothing.</param>
/// <param name="Histogram">Only shares in the sum of all mean something. Null where not computed.</param>
public sealed record MixedLoad(Rational? Mean, ImmutableArray<WeightClass>? Histogram);
