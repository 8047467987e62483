namespace Configurator.Core.Logic.Covering;

/// <summary>Rows, how many of them cover each allowed pair, and the pairs that none covers.</summary>
internal sealed class CoverState
{
    /// <summary>Stands for pairs that need no covering: never 0 or 1, and never counted.</summary>
    private const ushort Ignored = 1 << 15;

    private readonly int _values;
    private readonly ushort[] _count;
    private readonly int[] _place;
    private readonly List<int> _uncovered = [];

    public CoverState(PairSet pairs)
    {
        _values = pairs.ValueCount;
        _count = new ushort[_values * _values];
        _place = new int[_values * _values];
        Array.Fill(_count, Ignored);
        foreach (var (one, other) in pairs.All)
        {
            _count[(one * _values) + other] = _count[(other * _values) + one] = 0;
            Lose(one, other);
        }
    }

    /// <summary>Each row as the numbers of its values.</summary>
    public List<int[]> Rows { get; } = [];

    public int Uncovered => _uncovered.Count;

    public (int One, int Other) UncoveredAt(int index) => Math.DivRem(_uncovered[index], _values);

    public void Add(int[] row)
    {
        Rows.Add(row);
        for (var one = 0; one < row.Length; one++)
        {
            for (var other = one + 1; other < row.Length; other++)
            {
                Cover(row[one], row[other]);
            }
        }
    }

    public void RemoveAt(int index)
    {
        var row = Rows[index];
        for (var one = 0; one < row.Length; one++)
        {
            for (var other = one + 1; other < row.Length; other++)
            {
                Uncover(row[one], row[other]);
            }
        }

        Rows.RemoveAt(index);
    }

    /// <summary>How many pairs only this row covers.</summary>
    public int Alone(int index)
    {
        var row = Rows[index];
        var alone = 0;
        for (var one = 0; one < row.Length; one++)
        {
            var line = _count.AsSpan(row[one] * _values, _values);
            for (var other = one + 1; other < row.Length; other++)
            {
                alone += line[row[other]] == 1 ? 1 : 0;
            }
        }

        return alone;
    }

    /// <summary>How many more pairs would be uncovered if a row had another value in place of one of its own.</summary>
    public int Change(int[] row, int was, int now)
    {
        var (lost, won) = (0, 0);
        var before = _count.AsSpan(was * _values, _values);
        var after = _count.AsSpan(now * _values, _values);
        foreach (var value in row)
        {
            lost += before[value] == 1 ? 1 : 0;
            won += after[value] == 0 ? 1 : 0;
        }

        return lost - won;
    }

    /// <summary>The same for two values at once.</summary>
    public int Change(int[] row, (int Was, int Now) one, (int Was, int Now) other) =>
        Change(row, one.Was, one.Now)
        + Change(row, other.Was, other.Now)
        - IsAlone(one.Was, other.Was)
        + IsUncovered(one.Now, other.Was)
        + IsUncovered(one.Was, other.Now)
        - IsUncovered(one.Now, other.Now);

    /// <summary>How many pairs that none covers this row would cover.</summary>
    public int Won(int[] row)
    {
        var won = 0;
        for (var one = 0; one < row.Length; one++)
        {
            var line = _count.AsSpan(row[one] * _values, _values);
            for (var other = one + 1; other < row.Length; other++)
            {
                won += line[row[other]] == 0 ? 1 : 0;
            }
        }

        return won;
    }

    /// <summary>How many pairs that none covers a value would cover with the other values of a row.</summary>
    public int Won(int[] row, int value)
    {
        var won = 0;
        var line = _count.AsSpan(value * _values, _values);
        foreach (var other in row)
        {
            won += line[other] == 0 ? 1 : 0;
        }

        return won;
    }

    public void Set(int index, int parameter, int now)
    {
        var row = Rows[index];
        for (var other = 0; other < row.Length; other++)
        {
            if (other != parameter)
            {
                Uncover(row[parameter], row[other]);
                Cover(now, row[other]);
            }
        }

        row[parameter] = now;
    }

    private int IsAlone(int one, int other) => _count[(one * _values) + other] == 1 ? 1 : 0;

    private int IsUncovered(int one, int other) => _count[(one * _values) + other] == 0 ? 1 : 0;

    private void Cover(int one, int other)
    {
        ref var count = ref _count[(one * _values) + other];
        if ((count & Ignored) != 0)
        {
            return;
        }

        if (count == 0)
        {
            Win(Math.Min(one, other), Math.Max(one, other));
        }

        count++;
        _count[(other * _values) + one] = count;
    }

    private void Uncover(int one, int other)
    {
        ref var count = ref _count[(one * _values) + other];
        if ((count & Ignored) != 0)
        {
            return;
        }

        count--;
        _count[(other * _values) + one] = count;
        if (count == 0)
        {
            Lose(Math.Min(one, other), Math.Max(one, other));
        }
    }

    private void Lose(int low, int high)
    {
        var pair = (low * _values) + high;
        _place[pair] = _uncovered.Count;
        _uncovered.Add(pair);
    }

    private void Win(int low, int high)
    {
        var place = _place[(low * _values) + high];
        var last = _uncovered[^1];
        _uncovered[place] = last;
        _place[last] = place;
        _uncovered.RemoveAt(_uncovered.Count - 1);
    }
}
