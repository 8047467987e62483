using System.Collections.Immutable;

namespace Configurator.Core.Logic.Covering;

/// <summary>Pairs of values of different parameters. Values are numbered through: those of the first parameter, then
/// those of the second ...</summary>
internal sealed class PairSet
{
    private readonly bool[] _has;

    public PairSet(ImmutableArray<int> sizes)
    {
        Sizes = sizes;
        var first = new int[sizes.Length + 1];
        for (var parameter = 0; parameter < sizes.Length; parameter++)
        {
            first[parameter + 1] = first[parameter] + sizes[parameter];
        }

        First = [.. first];
        ValueCount = first[^1];
        _has = new bool[ValueCount * ValueCount];
        ParameterOf = [.. sizes.SelectMany((size, parameter) => Enumerable.Repeat(parameter, size))];
    }

    public ImmutableArray<int> Sizes { get; }

    /// <summary>Number of each parameter's first value; one entry more than there are parameters.</summary>
    public ImmutableArray<int> First { get; }

    public ImmutableArray<int> ParameterOf { get; }

    public int ValueCount { get; }

    /// <summary>Of a value with itself: some allowed row has it.</summary>
    public bool Has(int one, int other) => _has[(one * ValueCount) + other];

    public void Add(int one, int other) => _has[(one * ValueCount) + other] = _has[(other * ValueCount) + one] = true;

    /// <summary>Every pair of a row's values, and each with itself.</summary>
    /// <param name="row">Numbers of values.</param>
    public void AddAll(int[] row)
    {
        for (var one = 0; one < row.Length; one++)
        {
            for (var other = one; other < row.Length; other++)
            {
                Add(row[one], row[other]);
            }
        }
    }

    /// <summary>Each pair of different values once.</summary>
    public IEnumerable<(int One, int Other)> All
    {
        get
        {
            for (var one = 0; one < ValueCount; one++)
            {
                for (var other = one + 1; other < ValueCount; other++)
                {
                    if (Has(one, other))
                    {
                        yield return (one, other);
                    }
                }
            }
        }
    }

    /// <summary>No two pairs of the same two parameters stand in one row: no fewer rows can cover all.</summary>
    public int RowsMin =>
        All.GroupBy(pair => (ParameterOf[pair.One], ParameterOf[pair.Other]))
            .Select(group => group.Count())
            .DefaultIfEmpty(1)
            .Max();
}
