using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>What a conductor may carry where it lies, and whether its protection goes with it.</summary>
internal static class AmpacityExamples
{
    public static void Run(Given given, Answer answer)
    {
        var installation = InstallationOf(given.Text("installation", "method", "laying", "install"));
        var table = given.Number(Kind.Amperes, "i_table", "table", "i_tab", "ampacity", "i0") ?? Tabulated(given, installation);
        var ambient = given.Number(Kind.Celsius, "ambient", "t_ambient", "t", "ta", "ambient_temperature");
        var cables = given.Whole("cables", "loaded_cables", "group", "n_cables", "n", "circuits", "grouped");
        var byHeat = given.Number(Kind.Plain, "f_temp", "f_t", "temperature_factor", "ft", "f1")
            ?? (ambient is { } celsius ? Ampacity.TemperatureFactor(celsius) : 1);
        var byGroup = given.Number(Kind.Plain, "f_group", "f_g", "group_factor", "fg", "f2")
            ?? (cables is { } count && installation is { } lying ? Ampacity.GroupFactor(count, lying) : 1);
        answer.Add(Kind.Plain, byHeat, "f_temp", "f_t", "temperature_factor", "factor_temp");
        answer.Add(Kind.Plain, byGroup, "f_group", "f_g", "group_factor", "factor_group", "factor");
        if (table is null && given.Number(Kind.Amperes, "iz", "i_z") is { } stated)
        {
            Coordination(given, answer, stated);
        }

        if (table is not { } amperes || byHeat is not { } heat)
        {
            return;
        }

        var carries = Conductors.AmpacityInService(amperes, heat, byGroup);
        answer.Add(Kind.Amperes, carries, "iz", "i_z", "in_service", "i_service", "i_corrected");
        answer.Add(Kind.Amperes, amperes, "i_table", "ampacity", "table", "i");
        Coordination(given, answer, carries);
    }

    private static void Coordination(Given given, Answer answer, Rational carries)
    {
        var rated = given.Number(Kind.Amperes, "in", "i_n", "rated", "breaker", "protection", "fuse");
        var drawn = given.Number(Kind.Amperes, "ib", "i_b", "load", "design");
        if (rated is { } breaker)
        {
            answer.Say(breaker <= carries && (drawn is not { } load || load <= breaker), "ok", "coordinated", "protected");
        }
        else if (drawn is { } load)
        {
            answer.Say(load <= carries, "ok");
        }
    }

    private static Rational? Tabulated(Given given, Installation? installation) =>
        given.Whole("awg") is { } awg ? AwgSizes.Find(awg)?.ControlAmperes
        : Copper.AreaMm2(given) is { } area && installation is { } lying ? Ampacity.Amperes(area, lying)
        : null;

    private static Installation? InstallationOf(string? text) =>
        text is not null && Enum.TryParse<Installation>(text.Split(' ')[0], ignoreCase: true, out var installation) ? installation : null;
}
