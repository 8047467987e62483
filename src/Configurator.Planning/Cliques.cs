using System.Collections.Immutable;

namespace Configurator.Planning;

/// <summary>Sets of conditions of which no two ever hold together: fits under them can take turns at a port.</summary>
internal static class Cliques
{
    /// <summary>Beyond so many, further sets are left out: a plan may then share fewer ports than it could.</summary>
    private const int Max = 400;

    /// <summary>The largest such sets, every condition in one at least, in canonical order.</summary>
    public static ImmutableArray<ImmutableArray<int>> Maximal(bool[,] together)
    {
        var found = new List<ImmutableArray<int>>();
        Extend([], [.. Enumerable.Range(0, together.GetLength(0))], [], together, found);
        var covered = found.SelectMany(clique => clique).ToHashSet();
        found.AddRange(
            Enumerable
                .Range(0, together.GetLength(0))
                .Where(condition => !covered.Contains(condition))
                .Select(condition => ImmutableArray.Create(condition))
        );
        return [.. found.OrderBy(clique => clique, Comparer<ImmutableArray<int>>.Create(Compare))];
    }

    /// <summary>Sets without common members that cover all conditions: what is fitted at once is at most one member of
    /// each.</summary>
    public static ImmutableArray<ImmutableArray<int>> Cover(bool[,] together, IEnumerable<int> conditions)
    {
        var sets = new List<List<int>>();
        foreach (var condition in conditions)
        {
            if (sets.Find(set => set.TrueForAll(other => !together[condition, other])) is { } fitting)
            {
                fitting.Add(condition);
            }
            else
            {
                sets.Add([condition]);
            }
        }

        return [.. sets.Select(set => set.ToImmutableArray())];
    }

    /// <summary>Bron and Kerbosch's algorithm with a pivot.</summary>
    private static void Extend(
        List<int> chosen,
        List<int> candidates,
        List<int> done,
        bool[,] together,
        List<ImmutableArray<int>> found
    )
    {
        if (found.Count >= Max)
        {
            return;
        }

        if (candidates.Count == 0 && done.Count == 0)
        {
            found.Add([.. chosen.Order()]);
            return;
        }

        bool Apart(int one, int other) => one != other && !together[one, other];
        var pivot = candidates.Concat(done).MaxBy(vertex => candidates.Count(other => Apart(vertex, other)));
        foreach (var vertex in candidates.Where(vertex => !Apart(pivot, vertex)).ToList())
        {
            Extend(
                [.. chosen, vertex],
                candidates.FindAll(other => Apart(vertex, other)),
                done.FindAll(other => Apart(vertex, other)),
                together,
                found
            );
            candidates.Remove(vertex);
            done.Add(vertex);
        }
    }

    private static int Compare(ImmutableArray<int> left, ImmutableArray<int> right)
    {
        for (var i = 0; i < Math.Min(left.Length, right.Length); i++)
        {
            if (left[i] != right[i])
            {
                return left[i].CompareTo(right[i]);
            }
        }

        return left.Length.CompareTo(right.Length);
    }
}
