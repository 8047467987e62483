namespace Configurator.Core.Logic.Searching;

/// <summary>The smallest set that shares a member with each of some sets.</summary>
internal static class HittingSet
{
    /// <summary>Null where none has fewer members than the limit. Ties go to the set found first in ascending
    /// order.</summary>
    public static List<int>? Smallest(IReadOnlyList<HashSet<int>> sets, int fewerThan)
    {
        for (var size = 0; size < fewerThan; size++)
        {
            if (Choose(sets, [], size) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private static List<int>? Choose(IReadOnlyList<HashSet<int>> sets, List<int> chosen, int left)
    {
        var open = sets.Where(set => !chosen.Exists(set.Contains)).MinBy(set => set.Count);
        if (open is null)
        {
            return chosen;
        }

        return left == 0
            ? null
            : open.Order()
                .Select(member => Choose(sets, [.. chosen, member], left - 1))
                .FirstOrDefault(found => found is not null);
    }
}
