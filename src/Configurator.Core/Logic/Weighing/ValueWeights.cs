using System.Numerics;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Weighing;

/// <summary>A weight for each value of each variable of a formula, and a fixed part.</summary>
internal sealed class ValueWeights
{
    private readonly long[][] _weights;

    public ValueWeights(IReadOnlyCollection<int> sizes) => _weights = [.. sizes.Select(size => new long[size])];

    public long Fixed { get; set; }

    public ValueWeights Negated
    {
        get
        {
            var negated = new ValueWeights([.. _weights.Select(weights => weights.Length)]) { Fixed = -Fixed };
            for (var variable = 0; variable < _weights.Length; variable++)
            {
                negated._weights[variable] = Array.ConvertAll(_weights[variable], weight => -weight);
            }

            return negated;
        }
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

    /// <summary>What an assignment weighs.</summary>
    public long Of(int[] values)
    {
        var sum = Fixed;
        for (var variable = 0; variable < values.Length; variable++)
        {
            sum += _weights[variable][values[variable]];
        }

        return sum;
    }
}
