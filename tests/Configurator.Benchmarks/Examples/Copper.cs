using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>What an example says of a conductor, under any of the usual names.</summary>
internal static class Copper
{
    public static readonly string[] SourceVolts =
        ["us", "u", "u0", "u_master", "u_source", "u_supply", "u_s", "u_nom", "un", "u_n", "u_feed", "supply", "voltage", "v", "vs", "v_supply", "feed", "u1", "v_source"];

    public static readonly string[] LoadAmperes = ["i", "current", "load", "i_load", "i_l", "il", "ib", "i_b", "load_current", "i_device"];

    public static Rational? Length(Given given) =>
        given.Number(Kind.Metres, "length", "l", "len", "distance", "one_way", "run", "cable", "length_one_way", "cable_length");

    public static Rational? Celsius(Given given) =>
        given.Number(Kind.Celsius, "t", "temp", "temperature", "t_cond", "t_conductor", "conductor_temperature", "theta", "t_hot", "hot");

    public static Rational? AreaMm2(Given given) =>
        given.Number(Kind.SquareMillimetres, "area", "a", "s", "size", "csa", "cross_section", "section", "conductor", "q", "");

    public static int Class(Given given) => given.Whole("class", "iec_class", "conductor_class", "iec_60228_class") ?? 5;

    /// <summary>Ohm per km, hot where a temperature is given: stated, by AWG, or by standard area.</summary>
    public static Rational? OhmPerKm(Given given)
    {
        var celsius = Celsius(given);
        if (given.Number(Kind.OhmPerKm, "r75", "r_75", "r75_stranded") is { } warm)
        {
            return celsius is { } other ? Conductors.FromSeventyFive(warm, other) : warm;
        }

        var stated = given.Number(Kind.OhmPerKm, "r", "r20", "r_20", "resistance", "ohm", "r_conductor", "r1", "");
        if ((stated ?? Tabulated(given)) is { } cold)
        {
            return celsius is { } hot ? Conductors.AtTemperature(cold, hot) : cold;
        }

        return given.Whole("awg", "awg_size", "size_awg") is { } awg && AwgSizes.Find(awg) is { } size ? OfAwg(size, celsius) : null;
    }

    private static Rational OfAwg(AwgSize size, Rational? celsius) =>
        size.StrandedOhmPer1000Ft is { } per1000Ft
            ? Conductors.FromSeventyFive(per1000Ft / Rational.Of(0.3048m), celsius ?? 75)
            : Conductors.AtTemperature(size.SolidOhmPerKm, celsius ?? 20);

    private static Rational? Tabulated(Given given)
    {
        if (AreaMm2(given) is not { } area || area <= 0)
        {
            return null;
        }

        var isTinned = given.Flag("tinned") == true || given.Text("plating", "finish", "surface") == "tinned";
        return ConductorSizes.Find(area, Class(given)) is { } size ? isTinned ? size.TinnedOhmPerKm : size.PlainOhmPerKm
            : given.Number(Kind.Plain, "rho", "resistivity") is { } rho ? rho / area
            : Conductors.OhmPerKmOf(area);
    }

    /// <summary>Ohm out and back: stated, or from length and resistance.</summary>
    public static Rational? LoopOhm(Given given) =>
        given.Number(Kind.Ohm, "loop", "r_loop", "loop_r", "loop_resistance", "r", "line", "r_line", "resistance")
        ?? (Length(given) is { } length && OhmPerKm(given) is { } each
            ? Conductors.LoopOhm(length, each, given.Number(Kind.OhmPerKm, "r2", "r_return", "r_back", "return") ?? each)
            : null);
}
