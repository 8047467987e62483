using System.Collections.Immutable;
using System.Numerics;
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

/// <summary>What a search under several limits came to.</summary>
/// <param name="Found">Null where no configuration keeps the limits.</param>
/// <param name="IsSettled">False where the search was cut short before it found any: then there may be one.</param>
public sealed record Sought(Extreme? Found, bool IsSettled);

/// <summary>How many configurations weigh so much.</summary>
/// <param name="Configurations">Or their measure, where configurations are weighted by an order mix.</param>
public readonly record struct WeightClass(long Weight, BigInteger Configurations);

/// <summary>How heavy a configuration can be with an option in each number in which it can be taken, 0 included where
/// it can be left out.</summary>
public sealed record OptionMargin(OptionId Option, ImmutableSortedDictionary<int, long> HeaviestAt)
{
    /// <summary>Null where it can never be taken.</summary>
    public long? With => HeaviestAt.Where(number => number.Key > 0).Max(number => (long?)number.Value);

    /// <summary>Null where it is always included.</summary>
    public long? Without => HeaviestAt.TryGetValue(0, out var weight) ? weight : null;
}

/// <summary>Configurations over a limit.</summary>
/// <param name="Configurations">Null where not computed.</param>
/// <param name="Example">The heaviest one; null where none is over.</param>
public sealed record OverLimit(long Limit, BigInteger? Configurations, Extreme? Example);
