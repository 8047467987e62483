using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Weighing;

/// <summary>How heavy a configuration can be with an option in each number in which it can be taken, 0 included where
/// it can be left out.</summary>
public sealed record OptionMargin(OptionId Option, ImmutableSortedDictionary<int, long> HeaviestAt)
{
    /// <summary>Null where it can never be taken.</summary>
    public long? With => HeaviestAt.Where(number => number.Key > 0).Max(number => (long?)number.Value);

    /// <summary>Null where it is always included.</summary>
    public long? Without => HeaviestAt.TryGetValue(0, out var weight) ? weight : null;
}
