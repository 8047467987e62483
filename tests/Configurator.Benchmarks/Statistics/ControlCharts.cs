using System.Collections.Immutable;

namespace Configurator.Benchmarks.Statistics;

/// <summary>Exponentially weighted means: z_i = lambda x_i + (1 - lambda) z_(i-1), SPC-01. Source: NIST 6.3.2.4.</summary>
internal sealed record EwmaChart(double Weight, double Start)
{
    public IReadOnlyList<double> Smooth(IEnumerable<double> values)
    {
        var smoothed = new List<double>();
        var last = Start;
        foreach (var value in values)
        {
            last = (Weight * value) + ((1 - Weight) * last);
            smoothed.Add(last);
        }

        return smoothed;
    }

    /// <summary>From the centre to a limit, once settled: SPC-02, and at a sample: SPC-03.</summary>
    public double HalfWidth(double sigma, double width, int? sample = null) =>
        width * sigma * Math.Sqrt(Weight / (2 - Weight) * (sample is { } at ? 1 - Math.Pow(1 - Weight, 2 * at) : 1));
}

/// <summary>Tabular sums of what lies beyond a slack on either side of the target, SPC-04. Source: NIST 6.3.2.3.</summary>
internal sealed record CusumChart(double Target, double Slack, double Limit)
{
    public IReadOnlyList<(double High, double Low)> Sums(IEnumerable<double> values)
    {
        var sums = new List<(double High, double Low)>();
        var (high, low) = (0.0, 0.0);
        foreach (var value in values)
        {
            high = Math.Max(0, high + value - Target - Slack);
            low = Math.Max(0, low + Target - Slack - value);
            sums.Add((high, low));
        }

        return sums;
    }
}

/// <summary>Single values with the limits that their moving ranges give, SPC-05 and SPC-06. Source: NIST 6.3.2.2.</summary>
internal sealed record IndividualsChart(double Mean, ImmutableArray<double> Ranges, ImmutableArray<int> Signals)
{
    public double MovingRange => Ranges.IsEmpty ? 0 : Ranges.Average();

    public double Sigma => MovingRange / ControlCharts.RangeToSigma;

    public double Upper => Mean + (3 * Sigma);

    public double Lower => Mean - (3 * Sigma);

    public double RangeUpper => ControlCharts.RangeToUpper * MovingRange;
}

internal static class ControlCharts
{
    /// <summary>d2 of two values.</summary>
    public const double RangeToSigma = 1.128;

    /// <summary>D4 of two values.</summary>
    public const double RangeToUpper = 3.267;

    public static IndividualsChart Individuals(IReadOnlyList<double> values)
    {
        var chart = new IndividualsChart(values.Average(), [.. values.Zip(values.Skip(1), (left, right) => Math.Abs(right - left))], []);
        return chart with
        {
            Signals = [.. values.Select((value, at) => (value, at + 1)).Where(pair => pair.value > chart.Upper || pair.value < chart.Lower).Select(pair => pair.Item2)],
        };
    }
}
