namespace Configurator.Core.Logic.Searching;

/// <summary>The smallest set that shares a member with each of some sets.</summary>
internal static class HittingSet
{
    /// <summary>Null where none has fewer members than the limit. Ties go to the set found first in ascending
    /// order.</summary>
    /// <param name="spend">Told of the work done, which can grow with the power of the members.</param>
    public static List<int>? Smallest(IReadOnlyList<HashSet<int>> sets, int fewerThan, Action<long> spend)
    {
        for (var size = 0; size < fewerThan; size++)
        {
            if (Choose(sets, [], size, spend) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private static List<int>? Choose(IReadOnlyList<HashSet<int>> sets, List<int> chosen, int left, Action<long> spend)
    {
        spend(sets.Count * (chosen.Count + 1L));
        var open = sets.Where(set => !chosen.Exists(set.Contains)).MinBy(set => set.Count);
        if (open is null)
        {
            return chosen;
        }

        return left == 0
            ? null
            : open.Order()
                .Select(member => Choose(sets, [.. chosen, member], left - 1, spend))
                .FirstOrDefault(found => found is not null);
    }
}
