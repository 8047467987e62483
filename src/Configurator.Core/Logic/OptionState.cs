using System.Collections.Immutable;

namespace Configurator.Core.Logic;

/// <summary>What an order leaves of an option: the numbers in which it can still be taken, 0 among them where it may
/// be left out.</summary>
public sealed record OptionState(ImmutableArray<int> Possible)
{
    public bool IsForced => !Possible.Contains(0) && !Possible.IsEmpty;

    public bool IsRuledOut => Possible is [0] or [];

    public bool IsFree => Possible.Contains(0) && Possible.Length > 1;
}
