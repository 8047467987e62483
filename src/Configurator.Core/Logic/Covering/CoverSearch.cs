using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Logic.Covering;

/// <summary>
/// Makes a covering set smaller: takes a row away and repairs the rest by changing few values at a time, keeping off
/// those changed lately, until every pair is covered again.
/// </summary>
/// <remarks>Source: Lin, Luo, Cai, Su, Hao and Zhang, TCA: an efficient two-mode meta-heuristic algorithm for
/// combinatorial test generation, ASE 2015, for the shape of the algorithm.</remarks>
internal sealed class CoverSearch
{
    /// <summary>So many steps a value stays as it was changed.</summary>
    private const int Rest = 10;

    /// <summary>One step in so many puts a pair into a row chosen at random.</summary>
    private const int Restlessness = 1000;

    private readonly CoverSpace _space;
    private readonly PairSet _pairs;
    private readonly CoverState _state;
    private readonly RandomNumbers _random;
    private readonly int _parameters;
    private long[] _restsUntil = [];
    private long _step;
    private long _work;
    private int _fewest;

    private CoverSearch(CoverSpace space, PairSet pairs, RandomNumbers random)
    {
        (_space, _pairs, _random) = (space, pairs, random);
        _state = new(pairs);
        _parameters = pairs.Sizes.Length;
    }

    /// <param name="rows">They may leave pairs uncovered.</param>
    /// <param name="best">The smallest set known, returned where none smaller is found.</param>
    /// <param name="work">How many values may be looked at.</param>
    public static List<int[]> Improve(
        CoverSpace space,
        PairSet pairs,
        IEnumerable<int[]> rows,
        List<int[]> best,
        int rowsMin,
        long work,
        RandomNumbers random
    )
    {
        var search = new CoverSearch(space, pairs, random);
        foreach (var row in rows)
        {
            search._state.Add([.. row]);
        }

        return search.Run(best, rowsMin, work);
    }

    private List<int[]> Run(List<int[]> best, int rowsMin, long work)
    {
        Forget();
        while (_work < work)
        {
            if (_state.Uncovered > 0)
            {
                Step();
                continue;
            }

            if (_state.Rows.Count < best.Count)
            {
                best = [.. _state.Rows.Select(row => row.ToArray())];
            }

            if (_state.Rows.Count <= rowsMin)
            {
                break;
            }

            _state.RemoveAt(Enumerable.Range(0, _state.Rows.Count).MinBy(_state.Alone));
            Forget();
        }

        return best;
    }

    private void Forget()
    {
        _restsUntil = new long[_state.Rows.Count * _parameters];
        _fewest = int.MaxValue;
    }

    private void Step()
    {
        _step++;
        _work += (long)_state.Rows.Count * _parameters;
        var (one, other) = _state.UncoveredAt(_random.Below(_state.Uncovered));
        var row = _random.Below(Restlessness) == 0 ? -1 : BestRow(one, other);
        if (row < 0)
        {
            Force(_random.Below(_state.Rows.Count), one, other);
        }
        else
        {
            Put(row, one);
            Put(row, other);
        }

        _fewest = Math.Min(_fewest, _state.Uncovered);
    }

    /// <summary>The row into which the pair goes with the least harm; -1 where it goes into none.</summary>
    private int BestRow(int one, int other)
    {
        var (p, q) = (_pairs.ParameterOf[one], _pairs.ParameterOf[other]);
        var (best, bestChange, alike) = (-1, int.MaxValue, 0);
        for (var index = 0; index < _state.Rows.Count; index++)
        {
            var row = _state.Rows[index];
            var change =
                row[p] == one ? _state.Change(row, row[q], other)
                : row[q] == other ? _state.Change(row, row[p], one)
                : _state.Change(row, (row[p], one), (row[q], other));
            if (
                change > bestChange
                || (Rests(index, row, p, one, q, other) && _state.Uncovered + change >= _fewest)
                || !Allows(row, p, one, q, other)
            )
            {
                continue;
            }

            alike = change < bestChange ? 1 : alike + 1;
            if (change < bestChange || _random.Below(alike) == 0)
            {
                (best, bestChange) = (index, change);
            }
        }

        return best;
    }

    private bool Rests(int index, int[] row, int p, int one, int q, int other) =>
        (row[p] != one && _restsUntil[(index * _parameters) + p] > _step)
        || (row[q] != other && _restsUntil[(index * _parameters) + q] > _step);

    private bool Allows(int[] row, int p, int one, int q, int other)
    {
        if (_space.IsFree)
        {
            return true;
        }

        _work += _space.Cost;
        var (wasP, wasQ) = (row[p], row[q]);
        (row[p], row[q]) = (one, other);
        var allows = _space.Allows(row, p, q);
        (row[p], row[q]) = (wasP, wasQ);
        return allows;
    }

    private void Put(int index, int value)
    {
        var parameter = _pairs.ParameterOf[value];
        if (_state.Rows[index][parameter] != value)
        {
            _state.Set(index, parameter, value);
            _restsUntil[(index * _parameters) + parameter] = _step + Rest;
        }
    }

    /// <summary>Puts the pair into a row and changes whatever else must then change.</summary>
    private void Force(int index, int one, int other)
    {
        _work += 10L * _space.Cost;
        var row = _space.Complete(_pairs, [one, other], _state.Rows[index]);
        foreach (var value in row)
        {
            Put(index, value);
        }
    }
}
