using Configurator.Core.Engineering.Air;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>Air and force of cylinders, in inches and psi or millimetres and bar.</summary>
internal static class CylinderExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (given.Number(Kind.Metres, "bore", "D", "d_bore", "piston", "bore_d", "D_piston") is not { } bore)
        {
            return;
        }

        var rod = given.Number(Kind.Metres, "rod", "d_rod", "rod_d") ?? SmallDiameter(given);
        var stroke = given.Number(Kind.Metres, "stroke", "s") ?? 0;
        var cylinder = new Cylinder(bore, rod ?? 0, stroke);
        var ratio = Ratio(given);
        answer.Add(Kind.Plain, ratio, "ratio", "compression_ratio", "cr");
        Force(given, answer, bore, rod ?? 0);
        if (given.Number(Kind.PerMinute, "cycles", "cycles_min", "n", "rate", "cycles_per_min", "cpm", "") is not { } cycles || stroke == 0)
        {
            return;
        }

        var intake = cylinder.IntakePerMinute(cycles, IsDouble(given, rod), given.Number(Kind.Plain, "pi_over_4", "quarter_pi")) * 1000 / 60;
        answer.Add(Kind.LitresPerSecond, intake, "intake", "intake_cfm", "volume_flow", "swept");
        answer.Add(Kind.LitresPerSecond, intake * ratio, "scfm", "q", "free_air", "flow", "air", "l_min", "use", "consumption", "nl_min", "dm3_min", "q_anr");
    }

    /// <summary>Beside a large D, the small d is the rod.</summary>
    private static Rational? SmallDiameter(Given given) =>
        given.Inputs.Keys.Any(key => key == "D" || key.StartsWith("D_", StringComparison.Ordinal)) && given.Inputs.Keys.Any(key => key == "d" || key.StartsWith("d_", StringComparison.Ordinal))
            ? given.Number(Kind.Metres, "d")
            : null;

    private static bool IsDouble(Given given, Rational? rod) =>
        given.Flag("double_acting", "double") ?? (given.Text("acting", "type")?.Contains("double", StringComparison.OrdinalIgnoreCase) ?? (rod is not null));

    /// <summary>Gauge pressure and atmosphere in the unit of the pressure as written.</summary>
    private static Rational? Ratio(Given given)
    {
        string[] names = ["", "p", "pg", "p_g", "pressure", "gauge", "p_gauge"];
        if (given.Number(Kind.Bar, names) is not { } gauge)
        {
            return null;
        }

        var isPsi = given.Inputs.Keys.Any(key => key.Contains("psi", StringComparison.OrdinalIgnoreCase));
        var psi = Rational.Of(0.0689475729m);
        var raw = given.Number(Kind.Plain, "patm", "pa", "p_atm", "atm");
        var atmosphere = raw is { } written ? isPsi ? written * psi : written
            : given.Number(Kind.Bar, "patm", "pa", "p_atm", "atm") ?? (isPsi ? Rational.Of(14.696m) * psi : Rational.Of(1.01325m));
        return Cylinder.CompressionRatio(gauge, atmosphere);
    }

    private static void Force(Given given, Answer answer, Rational bore, Rational rod)
    {
        if (given.Number(Kind.Bar, "p", "pg", "p_g", "pressure", "gauge", "") is { } pressure)
        {
            var inMm = new Cylinder(bore * 1000, rod * 1000, 0);
            var efficiency = given.Number(Kind.Plain, "eta", "efficiency") ?? 1;
            var back = given.Number(Kind.Bar, "p_back", "back", "pb") ?? 0;
            answer.Add(Kind.Newtons, inMm.PushNewtons(pressure, back, efficiency), "f", "force", "f_out", "f_push", "push");
            answer.Add(Kind.Newtons, inMm.PushNewtons(pressure, 0, efficiency) - new Cylinder(rod * 1000, 0, 0).PushNewtons(pressure, 0, efficiency), "f_in", "f_pull", "pull", "f_back");
        }
    }
}
