using System.Numerics;

namespace Configurator.Core.Diagnostics;

/// <summary>Finds the known name that somebody most likely meant.</summary>
public static class Nearest
{
    private const int NameLengthMax = 64;

    /// <summary>Among more names than these nobody looks for one by its spelling, and each look costs time.</summary>
    private const int KnownMax = 2000;

    /// <summary>The known name with the fewest edits, if they are few against its length; ties go to ordinal
    /// order.</summary>
    public static string? To(string name, IEnumerable<string> known)
    {
        if (name.Length > NameLengthMax)
        {
            return null;
        }

        var near = Near(name, known);
        var best = near.Select(candidate => (Name: candidate, Edits: Edits(name, candidate)))
            .OrderBy(candidate => candidate.Edits)
            .ThenBy(candidate => candidate.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Name is not null && best.Edits <= Allowed(best.Name.Length) ? best.Name : null;
    }

    /// <summary>Those whose length and letters leave it possible that few edits lead to them.</summary>
    private static List<string> Near(string name, IEnumerable<string> known)
    {
        var letters = Letters(name);
        var near = new List<string>();
        var seen = 0;
        foreach (var candidate in known)
        {
            if (++seen > KnownMax)
            {
                return [];
            }

            var edits = Allowed(candidate.Length);
            if (
                candidate.Length <= NameLengthMax
                && Math.Abs(candidate.Length - name.Length) <= edits
                && BitOperations.PopCount(Letters(candidate) ^ letters) <= 2 * edits
            )
            {
                near.Add(candidate);
            }
        }

        return near;
    }

    /// <summary>One edit changes at most two of these bits.</summary>
    private static ulong Letters(string name)
    {
        var letters = 0UL;
        foreach (var character in name)
        {
            letters |= 1UL << (character & 63);
        }

        return letters;
    }

    private static int Allowed(int length) => Math.Max(1, length / 3);

    /// <summary>Insertions, deletions, replacements and swaps of neighbours that turn one name into the
    /// other.</summary>
    internal static int Edits(string left, string right)
    {
        int[] beforeLast = [];
        var last = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var row = new int[right.Length + 1];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var same = left[i - 1] == right[j - 1];
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
                }
            }

            (beforeLast, last) = (last, row);
        }

        return last[right.Length];
    }
}
