using System.Collections.Immutable;

namespace Configurator.Core.Logic.Covering;

/// <summary>Rows of one value for each of some parameters, and which of them are allowed.</summary>
internal abstract class CoverSpace
{
    /// <summary>Number of values of each parameter.</summary>
    public abstract ImmutableArray<int> Sizes { get; }

    /// <summary>True where every row is allowed.</summary>
    public abstract bool IsFree { get; }

    /// <summary>Work of one call of <see cref="Allows"/>, in values looked at.</summary>
    public virtual int Cost => 1;

    /// <summary>Is a row still allowed after one parameter, or two, of an allowed one were changed?</summary>
    /// <param name="row">Numbers of values, as in a <see cref="PairSet"/>.</param>
    public abstract bool Allows(int[] row, int parameter, int other);

    /// <summary>An allowed row with these values that keeps much of another one.</summary>
    /// <param name="near">Numbers of values; also those of the answer.</param>
    public abstract int[] Complete(PairSet pairs, ReadOnlySpan<int> values, int[] near);

    /// <summary>The pairs of values that some allowed row has.</summary>
    public abstract PairSet AllowedPairs();
}
