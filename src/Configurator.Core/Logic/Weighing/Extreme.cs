using Configurator.Core.Model;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The heaviest (or lightest) configuration.</summary>
/// <param name="Weight">What the witness weighs.</param>
/// <param name="Bound">No configuration goes beyond this; equals <paramref name="Weight"/> where that is
/// proved.</param>
public sealed record Extreme(long Weight, long Bound, Configuration Witness)
{
    /// <summary>False where the search was cut short: then the truth lies between weight and bound.</summary>
    public bool IsProved => Weight == Bound;

    internal Extreme Negated => new(-Weight, -Bound, Witness);
}
