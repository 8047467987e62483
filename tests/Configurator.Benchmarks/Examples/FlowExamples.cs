using Configurator.Core.Engineering.Air;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>Air through valves and holes.</summary>
internal static class FlowExamples
{
    private const double Psia = 6894.757293168;

    public static void Run(Given given, Answer answer)
    {
        var conductance = given.Number(Kind.Plain, "c", "conductance") ?? OfHole(given);
        answer.Add(Kind.Plain, conductance, "c", "conductance");
        answer.Add(Kind.SquareMillimetres, conductance / Rational.Of((decimal)Flow.ConductanceOf(1)), "s", "area", "a", "s_eff");
        if (conductance is { } c && given.Number(Kind.Bar, "p1", "upstream", "p_1") is { } upstream)
        {
            Through(given, answer, c.ToDouble(), upstream.ToDouble());
            Charge(given, answer, c.ToDouble(), upstream.ToDouble());
        }

        if (given.Number(Kind.Metres, "orifice", "d", "diameter", "hole") is { } hole)
        {
            Leak(given, answer, hole.ToDouble());
        }
    }

    private static void Through(Given given, Answer answer, double conductance, double upstream)
    {
        if (given.Number(Kind.Bar, "p2", "downstream", "p_2") is not { } downstream)
        {
            return;
        }

        var b = given.Number(Kind.Plain, "b", "critical")?.ToDouble() ?? 0.2;
        var flow = Flow.Iso6358(conductance, b, upstream, downstream.ToDouble(), Kelvin(given, "t1", "t", "temperature") ?? 293.15);
        answer.Add(Kind.LitresPerSecond, flow, "q", "flow");
        answer.Add(Kind.Plain, downstream.ToDouble() / upstream, "ratio", "p_ratio");
        answer.Say(downstream.ToDouble() / upstream <= b, "choked", "is_choked");
        answer.Say(downstream.ToDouble() / upstream <= b ? "choked" : "subsonic", "regime");
    }

    private static void Charge(Given given, Answer answer, double conductance, double upstream)
    {
        var rise = given.Number(Kind.Bar, "dp", "rise", "delta_p")
            ?? (given.Number(Kind.Bar, "p_end", "pe", "p_to") - given.Number(Kind.Bar, "p_start", "ps", "p_from"));
        if (rise is { } bar && given.Number(Kind.Litres, "v", "volume", "tank") is { } volume)
        {
            answer.Add(Kind.Milliseconds, Flow.ChargeSeconds(volume.ToDouble(), bar.ToDouble(), conductance, upstream) * 1000, "t", "time", "t_charge", "charge");
        }
    }

    private static void Leak(Given given, Answer answer, double diameter)
    {
        var gauge = given.Number(Kind.Bar, "", "p", "pg", "pressure", "supply", "gauge") is { } bar ? bar.ToDouble() * 1e5 : (double?)null;
        if (gauge is not { } over)
        {
            return;
        }

        var standard = (given.Number(Kind.Plain, "patm")?.ToDouble() ?? 14.696) * Psia;
        var isAbsolute = given.Inputs.Keys.Any(key => key.Contains("psia", StringComparison.OrdinalIgnoreCase) || key.Contains("abs", StringComparison.OrdinalIgnoreCase));
        var coefficient = given.Number(Kind.Plain, "cd", "coefficient", "c_d")?.ToDouble() ?? 1;
        var flow = Flow.Leak(diameter, coefficient, isAbsolute ? over : over + standard, Kelvin(given, "t", "temperature", "t1") ?? 293.15, standard);
        answer.Add(Kind.LitresPerSecond, flow * 1000, "scfm", "q", "flow", "leak");
    }

    /// <summary>A number below 150 is in degrees Celsius, for no machine runs so cold.</summary>
    private static double? Kelvin(Given given, params string[] names) =>
        given.Number(Kind.Plain, names) is { } bare ? bare.ToDouble() < 150 ? bare.ToDouble() + 273.15 : bare.ToDouble()
        : given.Number(Kind.Celsius, names)?.ToDouble() + 273.15;

    private static Rational? OfHole(Given given) =>
        given.Number(Kind.SquareMillimetres, "s", "area", "a", "") is { } area ? Rational.Of((decimal)Flow.ConductanceOf(area.ToDouble()))
        : null;
}
