using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Logic.Covering;

/// <summary>A small set of rows that has every allowed pair of values: constructed where all rows are allowed, else row
/// by row, then improved.</summary>
internal static class Cover
{
    /// <summary>Independent searches, side by side; the smallest set wins, of equal ones the first.</summary>
    private const int Searches = 2;

    /// <param name="space">A space for each search, since one keeps what it learns.</param>
    /// <param name="work">How many values each search may look at; the same on every machine.</param>
    /// <returns>Rows of one value for each parameter.</returns>
    public static List<int[]> Find(Func<CoverSpace> space, ulong seed, long work) =>
        Enumerable
            .Range(0, Searches)
            .AsParallel()
            .AsOrdered()
            .WithDegreeOfParallelism(Searches)
            .Select(search => Find(space(), new RandomNumbers(seed + (ulong)search), work))
            .MinBy(rows => rows.Count)!;

    private static List<int[]> Find(CoverSpace space, RandomNumbers random, long work)
    {
        var pairs = space.AllowedPairs();
        if (space.Sizes.Length < 2)
        {
            return Alone(pairs);
        }

        var rowsMin = pairs.RowsMin;
        var best = GreedyCover.Of(space, pairs, random);
        if (space.IsFree && AlgebraicCover.Of(space.Sizes) is { } constructed && constructed.Count <= best.Count)
        {
            best = [.. constructed.Select(row => Numbered(pairs, row))];
        }

        best = CoverSearch.Improve(space, pairs, best, best, rowsMin, work, random);
        return [.. best.Select(row => row.Select((value, i) => value - pairs.First[i]).ToArray())];
    }

    /// <summary>Where there are no pairs each value has a row.</summary>
    private static List<int[]> Alone(PairSet pairs) =>
        pairs.Sizes.IsEmpty
            ?
            [
                [],
            ]
            :
            [
                .. Enumerable
                    .Range(0, pairs.ValueCount)
                    .Where(value => pairs.Has(value, value))
                    .Select(value => new[] { value }),
            ];

    private static int[] Numbered(PairSet pairs, int[] row) => [.. row.Select((value, i) => pairs.First[i] + value)];
}
