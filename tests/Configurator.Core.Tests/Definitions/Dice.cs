using CsCheck;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Choices drawn at random, the same ones for the same number on every machine.</summary>
internal sealed class Dice(int number)
{
    private const ulong Spread = 0x9E3779B97F4A7C15UL;

    private readonly PCG _source = new(41, unchecked((ulong)(number + 1) * Spread));

    /// <summary>From 0 to one less than the count.</summary>
    public int Below(int count) => count <= 1 ? 0 : (int)_source.Next((uint)count);

    public bool Chance(int percent) => Below(100) < percent;

    public T Pick<T>(IReadOnlyList<T> all) => all[Below(all.Count)];
}
