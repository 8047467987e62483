using System.Collections.Immutable;
using System.Numerics;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Sets of sets, each a number of bits.</summary>
internal static class BitSets
{
    /// <summary>Those that contain no other, the smallest first.</summary>
    public static ImmutableArray<ulong> Minimal(IEnumerable<ulong> sets)
    {
        var minimal = ImmutableArray.CreateBuilder<ulong>();
        foreach (var set in sets.Distinct().OrderBy(BitOperations.PopCount).ThenBy(set => set))
        {
            if (!minimal.Any(smaller => (set & smaller) == smaller))
            {
                minimal.Add(set);
            }
        }

        return minimal.ToImmutable();
    }

    /// <summary>Is there a set of so many bits that shares one with each of the sets?</summary>
    public static bool CanBeMet(ImmutableArray<ulong> sets, int size, ulong with = 0)
    {
        var open = sets.FirstOrDefault(set => (set & with) == 0, ulong.MaxValue);
        if (open == ulong.MaxValue)
        {
            return true;
        }

        for (; size > 0 && open != 0; open &= open - 1)
        {
            if (CanBeMet(sets, size - 1, with | (open & (~open + 1))))
            {
                return true;
            }
        }

        return false;
    }
}
