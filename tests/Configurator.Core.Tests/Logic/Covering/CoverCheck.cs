using System.Globalization;

namespace Configurator.Core.Tests.Logic.Covering;

/// <summary>Holds rows against a constrained covering-array input. Reads the files by itself and proves which pairs there
/// are by its own search, so it shares no code with what it judges.</summary>
internal sealed class CoverCheck
{
    private readonly int[] _sizes;
    private readonly int[] _first;
    private readonly (bool IsTaken, int Value)[][] _clauses;

    public CoverCheck(string model, string constraints)
    {
        var numbers = Numbers(model);
        _sizes = numbers[2..(2 + numbers[1])];
        _first = new int[_sizes.Length + 1];
        for (var i = 0; i < _sizes.Length; i++)
        {
            _first[i + 1] = _first[i] + _sizes[i];
        }

        _clauses = [.. constraints.Split('\n').Skip(1).Where((_, line) => line % 2 == 1).Select(Clause)];
    }

    /// <summary>Every row is allowed, and every pair that some allowed row can have is in one of them.</summary>
    public void Covers(IReadOnlyCollection<int[]> rows)
    {
        var covered = new HashSet<(int, int)>();
        foreach (var row in rows)
        {
            Assert.Equal(_sizes.Length, row.Length);
            Assert.All(row.Zip(_sizes), pair => Assert.InRange(pair.First, 0, pair.Second - 1));
            int[] values = [.. row.Select((value, parameter) => _first[parameter] + value)];
            Assert.True(_clauses.All(clause => clause.Any(literal => values.Contains(literal.Value) == literal.IsTaken)));
            for (var i = 0; i < values.Length; i++)
            {
                for (var j = i + 1; j < values.Length; j++)
                {
                    covered.Add((values[i], values[j]));
                }
            }
        }

        foreach (var pair in AllPairs().Where(pair => !covered.Contains(pair)))
        {
            Assert.False(IsPossible(pair), $"the pair {pair} is covered by no row");
        }
    }

    private IEnumerable<(int, int)> AllPairs() =>
        from one in Enumerable.Range(0, _first[^1])
        from other in Enumerable.Range(one + 1, _first[^1] - one - 1)
        where Parameter(one) != Parameter(other)
        select (one, other);

    private int Parameter(int value) => Array.FindLastIndex(_first, first => first <= value);

    private bool IsPossible((int One, int Other) pair)
    {
        var row = new int[_sizes.Length];
        Array.Fill(row, -1);
        row[Parameter(pair.One)] = pair.One;
        row[Parameter(pair.Other)] = pair.Other;
        int[] bound =
        [
            .. _clauses.SelectMany(clause => clause.Select(literal => Parameter(literal.Value))).Distinct().Order(),
        ];
        return Fill(row, bound, 0);
    }

    /// <summary>Tries every value of every parameter that clauses name, one after the other.</summary>
    private bool Fill(int[] row, int[] bound, int next)
    {
        if (_clauses.Any(clause => clause.All(literal => IsFalse(row, literal))))
        {
            return false;
        }

        if (next == bound.Length)
        {
            return true;
        }

        var parameter = bound[next];
        if (row[parameter] >= 0)
        {
            return Fill(row, bound, next + 1);
        }

        for (var value = _first[parameter]; value < _first[parameter + 1]; value++)
        {
            row[parameter] = value;
            if (Fill(row, bound, next + 1))
            {
                return true;
            }
        }

        row[parameter] = -1;
        return false;
    }

    private bool IsFalse(int[] row, (bool IsTaken, int Value) literal)
    {
        var taken = row[Parameter(literal.Value)];
        return taken >= 0 && taken == literal.Value != literal.IsTaken;
    }

    private static (bool, int)[] Clause(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. words.Chunk(2).Select(pair => (pair[0] == "+", int.Parse(pair[1], CultureInfo.InvariantCulture)))];
    }

    private static int[] Numbers(string text) =>
        [
            .. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                .Select(word => int.Parse(word, CultureInfo.InvariantCulture)),
        ];
}
