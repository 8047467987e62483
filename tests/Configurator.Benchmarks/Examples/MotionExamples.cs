using System.Collections.Immutable;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>What times mean on something that moves.</summary>
internal static class MotionExamples
{
    private static readonly string[] JitterNames =
        ["t_cyc", "t_cyc_sensor", "tcyc", "t_sensor", "cycle", "t_bus", "bus", "t_scan", "scan", "t_task", "task", "t_network", "network", "t_master", "t_port"];

    public static void Run(Given given, Answer answer)
    {
        if ((given.Number(Kind.MetresPerSecond, "v", "speed", "velocity", "line_speed", "") ?? ByPitch(given)) is { } speed)
        {
            answer.Add(Kind.MetresPerSecond, speed, "v", "speed", "velocity");
            Passing(given, answer, speed);
            if (given.Number(Kind.Milliseconds, "dt", "latency", "delay", "t", "jitter", "delta_t") is { } late)
            {
                answer.Add(Kind.Metres, Motion.ShiftMillimetres(speed, late) / 1000, "shift", "e", "error", "registration_shift", "ds", "offset");
            }

            var jitters = given.Numbers(Kind.Milliseconds, "t", "jitters", "jitter", "times", "delays", "dt")
                ?? [.. JitterNames.Select(name => given.Number(Kind.Milliseconds, name)).OfType<Rational>()];
            if (!jitters.IsEmpty)
            {
                answer.Add(Kind.Metres, Motion.SpreadMillimetres(speed, jitters) / 1000, "e_pp", "pp", "spread", "peak_to_peak", "e", "jitter", "spread_pp");
                answer.Add(Kind.Metres, Motion.DeviationMillimetres(speed, jitters) / 1000, "rss", "e_rss", "sigma", "std", "deviation", "rms");
            }
        }

        Dwell(given, answer);
    }

    private static Rational? ByPitch(Given given) =>
        given.Number(Kind.Metres, "pitch") is { } pitch && given.Number(Kind.PerMinute, "rate", "n", "cycles", "rate_1_min", "rate_min", "cycles_min", "cycles_per_min", "packs_min", "") is { } rate
            ? Motion.SpeedOf(pitch, rate)
            : null;

    private static void Passing(Given given, Answer answer, Rational speed)
    {
        var target = given.Number(Kind.Metres, "w", "width", "target");
        var gap = given.Number(Kind.Metres, "g", "gap") ?? (given.Number(Kind.Metres, "pitch", "p") - target);
        if (target is not { } wide || gap is not { } between || speed == 0)
        {
            return;
        }

        var (on, off) = (Motion.PassingMilliseconds(speed, wide * 1000), Motion.PassingMilliseconds(speed, between * 1000));
        answer.Add(Kind.Hertz, Motion.SwitchingHertz(speed, wide * 1000, between * 1000), "f", "frequency");
        answer.Add(Kind.Milliseconds, on, "t_on", "on");
        answer.Add(Kind.Milliseconds, off, "t_off", "off");
        var shorter = on < off ? on : off;
        var response = given.Number(Kind.Milliseconds, "response", "t_response", "t_r") ?? 0;
        var scan = given.Number(Kind.Milliseconds, "scan", "t_scan") ?? 0;
        answer.Say(shorter > response && shorter > scan, "ok", "seen");
    }

    private static void Dwell(Given given, Answer answer)
    {
        if (given.Numbers(Kind.Milliseconds, "t", "time", "times") is not { } times
            || given.Numbers(Kind.Metres, "x", "position", "positions") is not { } positions
            || times.Length != positions.Length
            || given.Number(Kind.Metres, "lo", "low", "lo_mm") is not { } low)
        {
            return;
        }

        // Positions carry their unit, limits usually none: then they are in the same.
        var scale = given.Inputs.Keys.Any(key => key.EndsWith("_mm", StringComparison.OrdinalIgnoreCase)) ? 1000 : 1;
        var bare = given.Inputs.Keys.Any(key => key.Equals("lo", StringComparison.OrdinalIgnoreCase) || key.Equals("low", StringComparison.OrdinalIgnoreCase));
        var high = given.Number(Kind.Metres, "hi", "high");
        var stays = Motion.Stays(
            [.. times.Zip(positions, (time, position) => (time, position * scale))],
            low * (bare ? 1 : scale),
            high is { } most ? most * (bare ? 1 : scale) : 1_000_000);
        Stays(answer, stays);
    }

    private static void Stays(Answer answer, ImmutableArray<(Rational Enter, Rational Leave)> stays)
    {
        answer.Add(Kind.Plain, stays.Length, "stays", "visits");
        answer.Add(Kind.Milliseconds, stays.Aggregate((Rational)0, (sum, stay) => sum + (stay.Leave - stay.Enter)), "dwell", "t_dwell", "total");
        if (stays.Length > 0)
        {
            answer.Add(Kind.Milliseconds, stays[0].Enter, "enter", "t_enter");
            answer.Add(Kind.Milliseconds, stays[^1].Leave, "leave", "t_leave");
        }
    }
}
