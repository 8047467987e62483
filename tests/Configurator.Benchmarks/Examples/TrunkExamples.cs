using System.Collections.Immutable;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>A line with taps, loads of constant current or power.</summary>
internal static class TrunkExamples
{
    private const int StepsMax = 10_000;
    private const double Settled = 1e-12;

    private static readonly string[] LoadNames = ["loads", "load", "taps", "i", "currents", "boxes", "p", "powers", "power"];

    public static void Run(Given given, Answer answer)
    {
        if (given.Numbers(Kind.Metres, "segments", "segment", "lengths", "l", "length", "stretches") is not { Length: > 0 } lengths
            || given.Number(Kind.Volts, Copper.SourceVolts) is not { } source
            || Resistances(given, lengths.Length) is not { } each)
        {
            return;
        }

        if (given.Numbers(Kind.Amperes, LoadNames) is { } currents && currents.Length == lengths.Length)
        {
            Volts(given, answer, source, Trunk.VoltsAtTaps(source, [.. lengths.Select((length, at) => new TrunkStretch(length, each[at], currents[at]))]));
        }
        else if (given.Numbers(Kind.Watts, LoadNames) is { } powers && powers.Length == lengths.Length)
        {
            var loops = lengths.Select((length, at) => Conductors.LoopOhm(length, each[at]).ToDouble()).ToList();
            var volts = Settle(source.ToDouble(), loops, [.. powers.Select(power => power.ToDouble())]);
            answer.Say(volts is null, "collapse", "collapses", "impossible");
            if (volts is not null)
            {
                Volts(given, answer, source, [.. volts.Select(one => Rational.Of((decimal)one))]);
            }
        }
    }

    private static void Volts(Given given, Answer answer, Rational source, ImmutableArray<Rational> volts)
    {
        answer.Add(Kind.Volts, volts, "u", "u_taps", "taps", "v", "voltages", "u_boxes");
        answer.Add(Kind.Volts, volts[^1], "u_end", "u_last", "u_far", "u_min", "end", "last", "far");
        answer.Add(Kind.Volts, source - volts[^1], "drop", "du", "total_drop", "drop_total");
        answer.Add(Kind.Percent, (source - volts[^1]) * 100 / source, "percent", "drop", "drop_percent");
        var least = given.Number(Kind.Volts, "u_min", "min", "limit") ?? Rational.Of(20.4m);
        answer.Say(volts[^1] >= least, "ok", "enough");
        answer.Add(Kind.Volts, volts[^1] - least, "margin");
        answer.Say(false, "collapse", "collapses");
    }

    private static ImmutableArray<Rational>? Resistances(Given given, int count)
    {
        var celsius = Copper.Celsius(given) ?? 20;
        return given.Numbers(Kind.OhmPerKm, "r", "r20", "resistance") is { } several && several.Length == count
                ? [.. several.Select(one => Conductors.AtTemperature(one, celsius))]
            : given.Numbers(Kind.SquareMillimetres, "area", "a", "areas", "size", "sizes", "") is { } areas && areas.Length == count
                ? [.. areas.Select(area => Conductors.AtTemperature(ConductorSizes.OhmPerKm(area, Copper.Class(given)), celsius))]
            : Copper.OhmPerKm(given) is { } one ? [.. Enumerable.Repeat(one, count)]
            : null;
    }

    /// <summary>From the source voltage downward until nothing moves; null where it falls through.</summary>
    private static List<double>? Settle(double source, List<double> loops, List<double> powers)
    {
        var volts = powers.ConvertAll(_ => source);
        for (var step = 0; step < StepsMax; step++)
        {
            var currents = powers.Select((power, at) => power / volts[at]).ToList();
            var next = new List<double>();
            var level = source;
            for (var at = 0; at < loops.Count; at++)
            {
                level -= loops[at] * currents.Skip(at).Sum();
                next.Add(level);
            }

            if (next[^1] <= 0)
            {
                return null;
            }

            var moved = next.Zip(volts, (left, right) => Math.Abs(left - right)).Max();
            volts = next;
            if (moved < Settled)
            {
                return volts;
            }
        }

        return null;
    }
}
