using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>One load at the end of a two-wire line.</summary>
internal static class ConductorExamples
{
    /// <summary>Out and back, of an IO-Link cable.</summary>
    private const int LoopOhmMax = 6;

    public static void Run(Given given, Answer answer)
    {
        Resistance(given, answer);
        if (Copper.LoopOhm(given) is not { } loop)
        {
            return;
        }

        answer.Add(Kind.Ohm, loop, "loop", "r_loop", "loop_resistance");
        answer.Say(loop <= LoopOhmMax, "loop_ok");
        var source = given.Number(Kind.Volts, Copper.SourceVolts);
        ShortCircuit(given, answer, source, loop);
        if (given.Number(Kind.Amperes, Copper.LoadAmperes) is { } current)
        {
            answer.Add(Kind.Watts, loop * current * current, "p_loss", "loss");
            End(given, answer, source, loop, loop * current);
        }
        else if (source is { } volts && given.Number(Kind.Watts, "p", "power", "load", "p_load") is { } watts)
        {
            ConstantPower(given, answer, volts, loop, watts);
        }
    }

    private static void Resistance(Given given, Answer answer)
    {
        if (Copper.OhmPerKm(given) is { } each)
        {
            answer.Add(Kind.OhmPerKm, each, "r", "r_t", "rt", "r_hot", "r20", "resistance", "r_at_t");
        }

        if (Copper.Celsius(given) is { } celsius)
        {
            if (given.Number(Kind.Ohm, "r20", "r_20", "r", "r0") is { } cold)
            {
                answer.Add(Kind.Ohm, Conductors.AtTemperature(cold, celsius), "r", "r_t", "rt", "r_hot");
            }

            answer.Add(Kind.Plain, Conductors.CorrectionToTwenty(celsius), "k", "k_t", "correction");
            answer.Add(Kind.Plain, Conductors.AtTemperature(1, celsius), "factor", "ratio", "f", "r_factor");
        }
    }

    /// <summary>At an IO-Link device, the cable itself has a limit too.</summary>
    private static void End(Given given, Answer answer, Rational? source, Rational loop, Rational drop)
    {
        answer.Add(Kind.Volts, drop, "drop", "du", "delta_u", "u_drop", "voltage_drop", "v_drop", "loss");
        if (source is not { } volts)
        {
            return;
        }

        var end = volts - drop;
        answer.Add(Kind.Percent, drop * 100 / volts, "percent", "drop_percent", "drop", "du", "pct");
        answer.Add(Kind.Volts, end, "u_end", "u_device", "u_load", "u", "u_far", "end", "u2", "v_end", "u_l", "v_load");
        var least = given.Number(Kind.Volts, "u_min", "min", "limit", "u_device_min", "u_required");
        answer.Say(end >= (least ?? 18) && (given.Element("u_master") is null || loop <= LoopOhmMax), "ok", "enough");
        answer.Say(end >= (least ?? 18), "u_ok");
        answer.Add(Kind.Volts, end - (least ?? 18), "margin");
    }

    private static void ConstantPower(Given given, Answer answer, Rational source, Rational loop, Rational watts)
    {
        var point = ConstantPowerLoad.Settle(source, loop, watts);
        answer.Say(point is null, "collapse", "collapses", "impossible");
        answer.Say(point is null ? "collapse" : "ok", "result", "verdict", "state");
        answer.Say(point is not null, "possible", "feasible", "stable");
        if (loop > 0)
        {
            answer.Add(Kind.Watts, ConstantPowerLoad.WattsMax(source, loop), "p_max", "max_power");
        }

        if (point is { } settled)
        {
            answer.Add(Kind.Amperes, settled.Amperes, "i", "current", "i_load");
            answer.Add(Kind.Watts, loop * settled.Amperes * settled.Amperes, "p_loss", "loss");
            End(given, answer, source, loop, source - settled.Volts);
        }
        else
        {
            answer.Say(Missing.Value, "u", "u_end", "u_load", "i", "i_a", "u_v");
            answer.Say(false, "ok");
        }
    }

    private static void ShortCircuit(Given given, Answer answer, Rational? source, Rational loop)
    {
        var before = given.Number(Kind.Ohm, "rs", "r_source", "r_s", "source", "r_supply", "zs") ?? 0;
        var arc = given.Number(Kind.Volts, "u_arc", "arc") ?? 0;
        if (source is not { } volts || before + loop == 0)
        {
            return;
        }

        var flowing = (volts - arc) / (before + loop);
        answer.Add(Kind.Amperes, flowing, "i_sc", "isc", "i_k", "ik", "i_short", "short_circuit");
        if (TripAmperes(given) is { } trip)
        {
            answer.Add(Kind.Amperes, trip, "i_trip", "trip", "i_a");
            answer.Say(flowing >= trip, "trips", "trip_ok", "ok");
        }
    }

    private static Rational? TripAmperes(Given given)
    {
        if (given.Number(Kind.Amperes, "i_trip", "trip") is { } stated)
        {
            return stated;
        }

        var rated = given.Number(Kind.Amperes, "in", "i_n", "rated", "breaker", "rating");
        var ofCurve = given.Text("curve", "characteristic")?.ToUpperInvariant() switch
        {
            "B" => 5,
            "C" => 10,
            "D" => 20,
            _ => (Rational?)null,
        };
        var direct = given.Number(Kind.Plain, "dc_factor", "factor_dc") ?? Rational.Of(1.4m);
        return rated * (given.Number(Kind.Plain, "trip_factor_dc", "trip_factor", "factor", "multiple") ?? (ofCurve * direct));
    }
}
