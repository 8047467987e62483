using System.Numerics;

namespace Configurator.Core.Logic.Weighing;

/// <summary>
/// A sequence of numbers that a seed fixes for ever, on every platform and runtime: a counter stepped by the golden
/// ratio and mixed by two multiplications. Numbers below a bound are drawn by rejection, so each is equally likely.
/// </summary>
/// <remarks>Source: Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014
/// (SplitMix64).</remarks>
internal sealed class RandomNumbers(ulong seed)
{
    private ulong _state = seed;

    public ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>From 0 to one less than the bound.</summary>
    public int Below(int bound)
    {
        var limit = ulong.MaxValue - (ulong.MaxValue % (ulong)bound);
        ulong drawn;
        do
        {
            drawn = Next();
        } while (drawn >= limit);

        return (int)(drawn % (ulong)bound);
    }

    /// <summary>From 0 to one less than the bound: as many bits as the bound has, drawn anew until they are below
    /// it.</summary>
    public BigInteger Below(BigInteger bound)
    {
        if (bound <= int.MaxValue)
        {
            return Below((int)bound);
        }

        var bits = (int)(bound - 1).GetBitLength();
        BigInteger drawn;
        do
        {
            drawn = BigInteger.Zero;
            for (var left = bits; left > 0; left -= 64)
            {
                var word = left < 64 ? Next() >> (64 - left) : Next();
                drawn = (drawn << Math.Min(64, left)) | word;
            }
        } while (drawn >= bound);

        return drawn;
    }

    /// <summary>Puts items in an order of which every one is equally likely.</summary>
    public void Shuffle<T>(Span<T> items)
    {
        for (var i = items.Length - 1; i > 0; i--)
        {
            var other = Below(i + 1);
            (items[i], items[other]) = (items[other], items[i]);
        }
    }
}
