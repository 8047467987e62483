using System.Globalization;
using Configurator.Benchmarks.Statistics;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>Control charts, recognised by what they are given: a weight, a slack and a limit, or values alone.</summary>
internal static class SpcExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (Values(given) is not { Count: > 0 } values)
        {
            OfSummaries(given, answer);
            return;
        }

        var start = given.Number(Kind.Plain, "ewma0", "z0", "mu0", "mu", "target", "mean", "t");
        if (given.Number(Kind.Plain, "lambda", "weight") is { } weight)
        {
            Ewma(answer, new(weight.ToDouble(), start?.ToDouble() ?? values.Average()), values,
                given.Number(Kind.Plain, "sigma", "s", "std")?.ToDouble(), given.Number(Kind.Plain, "l", "width")?.ToDouble() ?? 3);
        }
        else if (start is { } target && given.Number(Kind.Plain, "k", "slack") is { } slack && given.Number(Kind.Plain, "h", "decision") is { } limit)
        {
            Cusum(answer, new(target.ToDouble(), slack.ToDouble(), limit.ToDouble()), values);
        }
        else
        {
            Individuals(answer, ControlCharts.Individuals(values));
        }
    }

    /// <summary>Limits need no values where what they follow from is given.</summary>
    private static void OfSummaries(Given given, Answer answer)
    {
        var centre = given.Number(Kind.Plain, "mean", "xbar", "x_bar", "mu0", "mu", "target", "ewma0");
        if (given.Number(Kind.Plain, "mr_bar", "mrbar") is { } range)
        {
            var chart = new IndividualsChart(centre?.ToDouble() ?? 0, [range.ToDouble()], []);
            answer.Add(Kind.Plain, chart.Sigma, "sigma", "s", "sigma_hat");
            answer.Add(Kind.Plain, chart.RangeUpper, "mr_ucl", "ucl_mr");
            Limits(answer, chart.Upper, chart.Lower);
        }
        else if (centre is { } start && given.Number(Kind.Plain, "lambda", "weight") is { } weight && given.Number(Kind.Plain, "sigma", "s") is { } sigma)
        {
            var half = new EwmaChart(weight.ToDouble(), start.ToDouble()).HalfWidth(sigma.ToDouble(), given.Number(Kind.Plain, "l", "width")?.ToDouble() ?? 3, given.Whole("i", "sample", "n"));
            Limits(answer, start.ToDouble() + half, start.ToDouble() - half);
        }
    }

    private static void Ewma(Answer answer, EwmaChart chart, IReadOnlyList<double> values, double? sigma, double width)
    {
        var smoothed = chart.Smooth(values);
        answer.Add(Kind.Plain, smoothed.Select(value => Rational.Of((decimal)value)), "z", "ewma");
        if (sigma is not { } spread)
        {
            return;
        }

        var steady = chart.HalfWidth(spread, width);
        Limits(answer, chart.Start + steady, chart.Start - steady);
        Signals(answer, [.. smoothed.Select((value, at) => (value, at + 1)).Where(pair => Math.Abs(pair.value - chart.Start) > steady).Select(pair => pair.Item2)]);
        var exact = values.Select((_, at) => chart.HalfWidth(spread, width, at + 1)).ToList();
        answer.Add(Kind.Plain, exact.Select(half => Rational.Of((decimal)(chart.Start + half))), "ucl_i", "ucl_exact", "ucl");
        answer.Add(Kind.Plain, exact.Select(half => Rational.Of((decimal)(chart.Start - half))), "lcl_i", "lcl_exact", "lcl");
    }

    private static void Cusum(Answer answer, CusumChart chart, IReadOnlyList<double> values)
    {
        var sums = chart.Sums(values);
        answer.Add(Kind.Plain, sums.Select(sum => Rational.Of((decimal)sum.High)), "s_hi", "c_plus", "sh");
        answer.Add(Kind.Plain, sums.Select(sum => Rational.Of((decimal)sum.Low)), "s_lo", "c_minus", "sl");
        Signals(answer, [.. sums.Select((sum, at) => (sum, at + 1)).Where(pair => pair.sum.High > chart.Limit || pair.sum.Low > chart.Limit).Select(pair => pair.Item2)]);
        var running = 0.0;
        for (var at = 0; at < sums.Count; at++)
        {
            running += values[at] - chart.Target;
            var number = (at + 1).ToString(CultureInfo.InvariantCulture);
            answer.Add(Kind.Plain, sums[at].High, $"s_hi_{number}", $"c_plus_{number}");
            answer.Add(Kind.Plain, sums[at].Low, $"s_lo_{number}", $"c_minus_{number}");
            answer.Add(Kind.Plain, running, $"cusum_{number}");
        }

        answer.Add(Kind.Plain, sums.Max(sum => sum.High), "s_hi_max", "max_s_hi");
        answer.Add(Kind.Plain, sums.Max(sum => sum.Low), "s_lo_max", "max_s_lo");
    }

    private static void Individuals(Answer answer, IndividualsChart chart)
    {
        answer.Add(Kind.Plain, chart.Mean, "mean", "xbar", "x_bar", "cl");
        answer.Add(Kind.Plain, chart.MovingRange, "mr_bar", "mrbar", "mean_mr");
        answer.Add(Kind.Plain, chart.Ranges.Select(range => Rational.Of((decimal)range)), "mr", "moving_ranges", "moving_range");
        answer.Add(Kind.Plain, chart.RangeUpper, "mr_ucl", "ucl_mr");
        answer.Add(Kind.Plain, chart.Sigma, "sigma", "s", "sigma_hat");
        Limits(answer, chart.Upper, chart.Lower);
        Signals(answer, chart.Signals);
    }

    private static void Limits(Answer answer, double upper, double lower)
    {
        answer.Add(Kind.Plain, upper, "ucl", "upper");
        answer.Add(Kind.Plain, lower, "lcl", "lower");
    }

    private static void Signals(Answer answer, IReadOnlyList<int> at)
    {
        answer.Add(Kind.Plain, at.Count, "signals", "n_signals", "out_of_control");
        answer.Add(Kind.Plain, at.Select(one => (Rational)one), "signal_at", "signal_indices");
        if (at.Count > 0)
        {
            answer.Add(Kind.Plain, at[0], "first_signal");
        }
        else
        {
            answer.Say(Missing.Value, "first_signal");
        }

        answer.Say(at.Count == 0, "in_control", "ok");
        answer.Say(at.Count > 0, "signal");
    }

    private static List<double>? Values(Given given)
    {
        if (given.Numbers(Kind.Plain, "x", "values", "data", "samples", "xbar", "x_bar") is { } list)
        {
            return [.. list.Select(value => value.ToDouble())];
        }

        if (given.Text("x", "table", "data", "values") is not { } name || given.Table(name) is not { } table)
        {
            return null;
        }

        string[] heads = ["x", "value", "x_bar_of_4", "x_bar", "xbar"];
        var head = heads.FirstOrDefault(one => table.Heads.Contains(one, StringComparer.OrdinalIgnoreCase)) ?? table.Heads.Skip(1).FirstOrDefault();
        return head is null ? null : [.. table.Rows.Select(row => Given.ValueOf(table.Cell(row, head))).OfType<Rational>().Select(value => value.ToDouble())];
    }
}
