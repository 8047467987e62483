using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Compiling;

/// <summary>A clause as a value.</summary>
internal readonly struct ClauseText(Literal[] literals) : IEquatable<ClauseText>
{
    private readonly Literal[] _literals = literals;

    public bool Equals(ClauseText other) => _literals.AsSpan().SequenceEqual(other._literals);

    public override bool Equals(object? obj) => obj is ClauseText other && Equals(other);

    public override int GetHashCode()
    {
        var hash = 17UL;
        foreach (var literal in _literals)
        {
            hash = unchecked((hash ^ literal.Values ^ ((ulong)literal.Variable << 20)) * 0x9E3779B97F4A7C15UL);
        }

        return (int)(hash >> 33);
    }
}
