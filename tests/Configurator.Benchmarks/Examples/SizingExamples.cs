using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>The longest line and the thinnest conductor that keep a drop.</summary>
internal static class SizingExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (DropMax(given) is not { } drop || given.Number(Kind.Amperes, Copper.LoadAmperes) is not { } current || current <= 0 || drop <= 0)
        {
            return;
        }

        if (Copper.OhmPerKm(given) is { } each)
        {
            answer.Add(Kind.Metres, Conductors.LengthMetresMax(drop, each, current), "length_max", "l_max", "l", "length", "max_length", "lmax");
        }

        if (Copper.Length(given) is not { } length)
        {
            return;
        }

        var area = Conductors.AreaMin(length, current, drop, Copper.Celsius(given) ?? 20);
        answer.Add(Kind.SquareMillimetres, area, "area", "a", "area_min", "a_min", "min_area");
        answer.Add(
            Kind.SquareMillimetres,
            ConductorSizes.AtLeast(area, Copper.Class(given))?.AreaMm2,
            "next", "standard", "size", "next_standard", "standard_size", "next_size", "std", "chosen", "a_std", "area_std", "a_standard");
        if (AwgSizes.AtLeast(area) is { } american)
        {
            answer.Add(Kind.Plain, american.Awg, "awg");
        }
    }

    private static Rational? DropMax(Given given) =>
        given.Number(Kind.Volts, "du", "du_max", "drop", "drop_max", "max_drop", "delta_u", "u_drop", "drop_limit")
        ?? (given.Number(Kind.Percent, "du", "du_max", "drop", "drop_max", "max_drop", "") * given.Number(Kind.Volts, Copper.SourceVolts) / 100);
}
