using Configurator.Core.Engineering.Box;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>Cabinets: area, temperature rise, cooling, fans.</summary>
internal static class EnclosureExamples
{
    private static readonly (string Words, Mounting Mounting)[] Mountings =
    [
        ("single free", Mounting.SingleFree),
        ("single wall", Mounting.SingleOnWall),
        ("end free", Mounting.EndOfRowFree),
        ("end wall", Mounting.EndOfRowOnWall),
        ("middle covered", Mounting.MiddleOfRowOnWallTopCovered),
        ("middle free", Mounting.MiddleOfRowFree),
        ("middle wall", Mounting.MiddleOfRowOnWall),
    ];

    public static void Run(Given given, Answer answer)
    {
        var area = given.Number(Kind.SquareMetres, "a", "area", "a_eff", "area_eff") ?? Area(given);
        var k = given.Number(Kind.Plain, "k", "k_w_m2k") ?? KOf(given.Text("material", "wall"));
        var watts = given.Number(Kind.Watts, "p", "power", "loss", "losses", "p_loss", "heat", "q");
        var rise = Rise(given);
        EveryMounting(given, answer);
        answer.Add(Kind.SquareMetres, area, "area", "a", "a_eff", "effective_area");
        answer.Add(Kind.Plain, k, "k");
        Losses(given, answer);
        if (k is not { } through)
        {
            return;
        }

        if (watts is { } power && area is { } surface)
        {
            Warm(given, answer, Heat.Rise(power, through, surface));
        }

        if (watts is { } loss && rise is { } over)
        {
            answer.Add(Kind.SquareMetres, Heat.AreaFor(loss, through, over), area is null ? "area" : "area_required", "a", "a_min", "area_min", "a_required");
            Cool(given, answer, loss, through, area ?? 0, over);
        }
        else if (area is { } skin && rise is { } held)
        {
            answer.Add(Kind.Watts, through * skin * held, "p", "p_max", "q", "power", "p_through");
        }
    }

    private static void Warm(Given given, Answer answer, Rational rise)
    {
        answer.Add(Kind.Plain, rise, "dt", "dt_k", "rise", "rise_k", "delta_t", "delta_t_k", "dt_c");
        if (given.Number(Kind.Celsius, "t_ambient", "ambient", "ta", "t_a", "t_out", "t_amb") is { } ambient)
        {
            answer.Add(Kind.Celsius, ambient + rise, "t_in", "t_inside", "inside", "ti", "t_i", "t_int");
            answer.Say(ambient + rise <= (given.Number(Kind.Celsius, "t_max", "limit", "t_limit") ?? 40), "ok");
        }
    }

    private static void Cool(Given given, Answer answer, Rational watts, Rational k, Rational area, Rational rise)
    {
        var factor = given.Number(Kind.Plain, "f", "factor", "fan_factor") ?? Rational.Of(3.1m);
        var flow = Heat.FanFlow(watts, k, area, rise, factor);
        answer.Add(Kind.LitresPerSecond, flow * 1000 / 3600, "m3_h", "v", "flow", "fan", "fan_flow", "q");
        answer.Add(Kind.Watts, Heat.CoolingWatts(watts, k, area, rise), "q", "cooling", "p_cool", "q_cool", "q_active", "p_k");
        answer.Add(Kind.Watts, Heat.HeaterWatts(watts, k, area, rise), "p_h", "heater", "p_heater");
        answer.Add(Kind.Watts, k * area * rise, "p_wall", "through_wall", "q_wall");
    }

    private static void Losses(Given given, Answer answer)
    {
        if (given.Number(Kind.Plain, "eta", "efficiency") is { } eta && eta > 0
            && given.Number(Kind.Watts, "p_out", "pout", "output", "p") is { } output)
        {
            answer.Add(Kind.Watts, Heat.SupplyLossWatts(output, eta), "p_loss", "loss", "p_v");
        }
    }

    private static Rational? Rise(Given given) =>
        given.Number(Kind.Plain, "dt", "dt_k", "rise", "rise_k", "delta_t", "delta_t_k", "dt_c")
        ?? (given.Number(Kind.Celsius, "t_in", "t_inside", "ti", "t_i", "t_max") - given.Number(Kind.Celsius, "t_ambient", "ambient", "ta", "t_a", "t_out", "t_amb"));

    private static Rational? Area(Given given) =>
        Size(given) is { } size && MountingOf(given.Text("mounting", "installation", "place")) is { } mounting
            ? size.EffectiveArea(mounting)
            : null;

    private static EnclosureSize? Size(Given given) =>
        given.Number(Kind.Metres, "h", "height") is { } height
        && given.Number(Kind.Metres, "w", "width") is { } width
        && given.Number(Kind.Metres, "d", "depth") is { } depth
            ? new(height, width, depth)
            : null;

    /// <summary>Each mounting in the words of the published table, and all in its order.</summary>
    private static void EveryMounting(Given given, Answer answer)
    {
        if (Size(given) is not { } size || given.Table("enclosure_area_formulas.csv") is not { } table)
        {
            return;
        }

        var areas = table.Rows.Select(row => table.Cell(row, "mounting"))
            .Select(words => (words, Area: MountingOf(words) is { } mounting ? size.EffectiveArea(mounting) : 0))
            .ToList();
        answer.Add(Kind.SquareMetres, areas.Select(one => one.Area), "areas", "area");
        foreach (var (words, area) in areas)
        {
            answer.Add(Kind.SquareMetres, area, words);
        }
    }

    private static Mounting? MountingOf(string? text)
    {
        var words = (text ?? "").ToLowerInvariant().Replace("standing", "", StringComparison.Ordinal);
        var found = Mountings.FirstOrDefault(one => one.Words.Split(' ').All(word => words.Contains(word, StringComparison.Ordinal)));
        return found.Words is null ? null : found.Mounting;
    }

    private static Rational? KOf(string? material) =>
        material is null ? null
        : Heat.Walls.FirstOrDefault(wall => material.ToLowerInvariant().StartsWith(wall.Name.Split(',')[0].Split(' ')[0], StringComparison.Ordinal))
            ?.WattsPerSquareMetreKelvin;
}
