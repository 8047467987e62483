using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Logic.Covering;

/// <summary>A small set of rows that has every allowed pair of values: constructed where all rows are allowed, else row
/// by row, then improved.</summary>
internal static class Cover
{
    /// <param name="work">How many values may be looked at while improving; the same on every machine.</param>
    /// <returns>Rows of one value for each parameter.</returns>
    public static List<int[]> Find(CoverSpace space, ulong seed, long work)
    {
        var pairs = space.AllowedPairs();
        var random = new RandomNumbers(seed);
        var best = GreedyCover.Of(space, pairs, random);
        var rowsMin = pairs.RowsMin;
        if (space.IsFree && AlgebraicCover.Of(space.Sizes) is { } constructed && constructed.Count <= best.Count)
        {
            best = [.. constructed.Select(row => row.Select((value, i) => pairs.First[i] + value).ToArray())];
        }

        best = CoverSearch.Improve(space, pairs, best, best, rowsMin, work, random);
        return [.. best.Select(row => row.Select((value, i) => value - pairs.First[i]).ToArray())];
    }
}
