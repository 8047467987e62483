using System.Collections.Immutable;

namespace Configurator.Core.Review.Lines;

/// <summary>Which lines of two texts differ: those not in a longest common subsequence.</summary>
internal static class LineDifference
{
    /// <summary>Beyond so many pairs of lines all between the first and the last difference counts as
    /// replaced.</summary>
    private const long PairsMax = 4_000_000;

    public static ImmutableArray<LineHunk> Of(ImmutableArray<string> before, ImmutableArray<string> after)
    {
        var start = 0;
        while (start < before.Length && start < after.Length && before[start] == after[start])
        {
            start++;
        }

        var end = 0;
        while (
            end < before.Length - start
            && end < after.Length - start
            && before[before.Length - 1 - end] == after[after.Length - 1 - end]
        )
        {
            end++;
        }

        var (old, now) = (before[start..^end], after[start..^end]);
        return old.IsEmpty && now.IsEmpty ? []
            : (long)old.Length * now.Length > PairsMax ? [new(start, old.Length, start, now.Length)]
            : [.. Hunks(old, now, start)];
    }

    private static IEnumerable<LineHunk> Hunks(ImmutableArray<string> old, ImmutableArray<string> now, int start)
    {
        var common = CommonFrom(old, now);
        var (i, j) = (0, 0);
        while (i < old.Length || j < now.Length)
        {
            var (fromOld, fromNow) = (i, j);
            while (i < old.Length || j < now.Length)
            {
                if (i < old.Length && j < now.Length && old[i] == now[j])
                {
                    break;
                }

                if (j == now.Length || (i < old.Length && common[i + 1, j] >= common[i, j + 1]))
                {
                    i++;
                }
                else
                {
                    j++;
                }
            }

            if (i > fromOld || j > fromNow)
            {
                yield return new(start + fromOld, i - fromOld, start + fromNow, j - fromNow);
            }

            (i, j) = (i + 1, j + 1);
        }
    }

    /// <summary>Length of the longest common subsequence of what is left from each pair of lines on.</summary>
    private static int[,] CommonFrom(ImmutableArray<string> old, ImmutableArray<string> now)
    {
        var common = new int[old.Length + 1, now.Length + 1];
        for (var i = old.Length - 1; i >= 0; i--)
        {
            for (var j = now.Length - 1; j >= 0; j--)
            {
                common[i, j] =
                    old[i] == now[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        return common;
    }
}
