using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Logic.Covering;

/// <summary>Covers all pairs row by row: each starts from a pair not yet covered and is climbed to a row that covers
/// as many more as single changes find.</summary>
internal static class GreedyCover
{
    /// <summary>So many starts are tried for each row.</summary>
    private const int Tries = 4;

    private const int RoundsMax = 4;

    public static List<int[]> Of(CoverSpace space, PairSet pairs, RandomNumbers random)
    {
        var state = new CoverState(pairs);
        while (state.Uncovered > 0)
        {
            var best = Enumerable
                .Range(0, Tries)
                .Select(_ => Row(space, pairs, state, random))
                .MaxBy(row => state.Won(row))!;
            state.Add(best);
        }

        return state.Rows;
    }

    private static int[] Row(CoverSpace space, PairSet pairs, CoverState state, RandomNumbers random)
    {
        var (one, other) = state.UncoveredAt(random.Below(state.Uncovered));
        int[] anything = [.. pairs.Sizes.Select((size, parameter) => pairs.First[parameter] + random.Below(size))];
        var row = space.Complete(pairs, [one, other], anything);
        int[] order = [.. Enumerable.Range(0, row.Length)];
        for (var round = 0; round < RoundsMax; round++)
        {
            random.Shuffle(order.AsSpan());
            var hasChanged = false;
            foreach (var parameter in order)
            {
                hasChanged |=
                    row[parameter] != one && row[parameter] != other && Climb(space, pairs, state, row, parameter);
            }

            if (!hasChanged)
            {
                break;
            }
        }

        return row;
    }

    /// <summary>Gives the parameter the value that covers most, if it is better than the one it has.</summary>
    private static bool Climb(CoverSpace space, PairSet pairs, CoverState state, int[] row, int parameter)
    {
        var was = row[parameter];
        var (best, most) = (was, state.Won(row, was));
        for (var value = pairs.First[parameter]; value < pairs.First[parameter + 1]; value++)
        {
            if (value != was && state.Won(row, value) is var won && won > most)
            {
                row[parameter] = value;
                if (space.IsFree || space.Allows(row, parameter, parameter))
                {
                    (best, most) = (value, won);
                }

                row[parameter] = was;
            }
        }

        row[parameter] = best;
        return best != was;
    }
}
