using System.Numerics;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Weighing;

/// <summary>A weight for each value of each variable of a formula, and a fixed part.</summary>
internal sealed class ValueWeights
{
    private readonly long[][] _weights;

    public ValueWeights(IReadOnlyCollection<int> sizes) => _weights = [.. sizes.Select(size => new long[size])];

    public long Fixed { get; set; }

    /// <summary>Every weight so many times; null where sums could grow beyond what a number holds.</summary>
    public ValueWeights? Scaled(int factor)
    {
        var most = _weights.Sum(weights => weights.Max(weight => Math.Abs((decimal)weight)));
        if ((most + Math.Abs((decimal)Fixed) + 1) * factor > long.MaxValue / 4)
        {
            return null;
        }

        var scaled = new ValueWeights([.. _weights.Select(weights => weights.Length)]) { Fixed = Fixed * factor };
        for (var variable = 0; variable < _weights.Length; variable++)
        {
            scaled._weights[variable] = Array.ConvertAll(_weights[variable], weight => weight * factor);
        }

        return scaled;
    }

    public long Of(int variable, int value) => _weights[variable][value];

    public void Add(Literal literal, long weight)
    {
        for (var values = literal.Values; values != 0; values &= values - 1)
        {
            _weights[literal.Variable][BitOperations.TrailingZeroCount(values)] += weight;
        }
    }

    /// <summary>The heaviest of some values; <see cref="Optimum.None"/> where there are none.</summary>
    public long Heaviest(int variable, ulong values)
    {
        var heaviest = Optimum.None;
        for (; values != 0; values &= values - 1)
        {
            heaviest = Math.Max(heaviest, _weights[variable][BitOperations.TrailingZeroCount(values)]);
        }

        return heaviest;
    }
}
