using System.Collections.Frozen;
using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>A unit as it ends the name of a number, such as <c>r_ohm_per_1000ft</c>.</summary>
internal sealed record ExampleUnit(Kind Kind, Rational Factor, Rational Offset)
{
    public Rational ToBase(Rational value) => (value + Offset) * Factor;

    public Rational FromBase(Rational value) => (value / Factor) - Offset;
}

/// <summary>Takes names apart into what is named and its unit.</summary>
internal static class Units
{
    private static readonly Rational Foot = Rational.Of(0.3048m);
    private static readonly Rational Psi = Rational.Of(0.0689475729m);
    private static readonly Rational Cfm = Rational.Of(0.4719474432m);

    private static readonly FrozenDictionary<string, ImmutableArray<ExampleUnit>> All = new (string Names, Kind Kind, Rational Factor)[]
    {
        ("m|metre|metres|meter|meters", Kind.Metres, 1),
        ("mm", Kind.Metres, new(1, 1000)),
        ("cm", Kind.Metres, new(1, 100)),
        ("km", Kind.Metres, 1000),
        ("ft|feet|foot", Kind.Metres, Foot),
        ("in|inch|inches", Kind.Metres, Foot / 12),
        ("m2|sqm", Kind.SquareMetres, 1),
        ("cm2", Kind.SquareMetres, new(1, 10_000)),
        ("mm2|sqmm", Kind.SquareMillimetres, 1),
        ("ohm|ohms", Kind.Ohm, 1),
        ("mohm|milliohm", Kind.Ohm, new(1, 1000)),
        ("ohm_km|ohm_per_km|mohm_m|mohm_per_m|per_km", Kind.OhmPerKm, 1),
        ("ohm_m|ohm_per_m", Kind.OhmPerKm, 1000),
        ("ohm_per_1000ft|ohm_1000ft|ohm_per_kft|ohm_kft|per_1000ft|ohm_per_1000_ft", Kind.OhmPerKm, 1 / Rational.Of(0.3048m)),
        ("ohm_per_ft|ohm_ft", Kind.OhmPerKm, 1000 / Foot),
        ("a|amp|amps|ampere|amperes", Kind.Amperes, 1),
        ("ma", Kind.Amperes, new(1, 1000)),
        ("v|volt|volts", Kind.Volts, 1),
        ("mv", Kind.Volts, new(1, 1000)),
        ("w|watt|watts", Kind.Watts, 1),
        ("kw", Kind.Watts, 1000),
        ("mw", Kind.Watts, new(1, 1000)),
        ("c|degc|celsius", Kind.Celsius, 1),
        ("ms", Kind.Milliseconds, 1),
        ("s|sec|seconds", Kind.Milliseconds, 1000),
        ("us", Kind.Milliseconds, new(1, 1000)),
        ("min|minutes", Kind.Milliseconds, 60_000),
        ("m_s|mps|m_per_s|mm_ms", Kind.MetresPerSecond, 1),
        ("m_min|mpm|m_per_min", Kind.MetresPerSecond, new(1, 60)),
        ("mm_s|mm_per_s", Kind.MetresPerSecond, new(1, 1000)),
        ("ft_min|fpm|ft_per_min", Kind.MetresPerSecond, Foot / 60),
        ("in_s", Kind.MetresPerSecond, Foot / 12),
        ("bar|bara|barg|bar_abs|bar_g|bar_a", Kind.Bar, 1),
        ("kpa", Kind.Bar, new(1, 100)),
        ("mpa", Kind.Bar, 10),
        ("pa", Kind.Bar, new(1, 100_000)),
        ("psi|psig|psia", Kind.Bar, Psi),
        ("dm3_s|l_s", Kind.LitresPerSecond, 1),
        ("l_min|dm3_min|nl_min", Kind.LitresPerSecond, new(1, 60)),
        ("m3_h", Kind.LitresPerSecond, new(1000, 3600)),
        ("m3_min", Kind.LitresPerSecond, new(1000, 60)),
        ("scfm|cfm", Kind.LitresPerSecond, Cfm),
        ("l|dm3|litre|litres", Kind.Litres, 1),
        ("m3", Kind.Litres, 1000),
        ("ft3|cf", Kind.Litres, Rational.Of(28.316846592m)),
        ("hz|per_s", Kind.Hertz, 1),
        ("khz", Kind.Hertz, 1000),
        ("per_min|min_1|cpm|ppm|rpm", Kind.PerMinute, 1),
        ("percent|pct", Kind.Percent, 1),
        ("mas", Kind.MilliampereSeconds, 1),
        ("as|coulomb", Kind.MilliampereSeconds, 1000),
        ("n", Kind.Newtons, 1),
        ("kn", Kind.Newtons, 1000),
    }
        .SelectMany(row => row.Names.Split('|').Select(name => KeyValuePair.Create(name, new ExampleUnit(row.Kind, row.Factor, 0))))
        .Concat(
        [
            KeyValuePair.Create("k", new ExampleUnit(Kind.Celsius, 1, Rational.Of(-273.15m))),
            KeyValuePair.Create("f", new ExampleUnit(Kind.Celsius, new(5, 9), -32)),
            KeyValuePair.Create("degf", new ExampleUnit(Kind.Celsius, new(5, 9), -32)),
        ])
        .GroupBy(row => row.Key, StringComparer.Ordinal)
        .ToFrozenDictionary(group => group.Key, group => group.Select(row => row.Value).ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>The unit of that kind that ends the name, and what stands before it; the name as it is where none does.</summary>
    public static (string Stem, ExampleUnit? Unit) Split(string name, Kind kind)
    {
        var lower = name.ToLowerInvariant().Replace('-', '_').Replace('/', '_');
        for (var at = 0; at < lower.Length; at++)
        {
            var start = at == 0 ? 0 : at + 1;
            if ((at == 0 || lower[at] == '_') && Find(lower[start..], kind) is { } unit)
            {
                return (at == 0 ? "" : lower[..at], unit);
            }
        }

        return (lower, null);
    }

    /// <summary>The longest unit of any kind that ends the name.</summary>
    public static Kind? KindOf(string name)
    {
        var lower = name.ToLowerInvariant();
        for (var at = lower.IndexOf('_', StringComparison.Ordinal); at >= 0; at = lower.IndexOf('_', at + 1))
        {
            if (All.TryGetValue(lower[(at + 1)..], out var units))
            {
                return units[0].Kind;
            }
        }

        return null;
    }

    private static ExampleUnit? Find(string symbol, Kind kind) =>
        All.TryGetValue(symbol, out var units) ? units.FirstOrDefault(unit => unit.Kind == kind) : null;
}
