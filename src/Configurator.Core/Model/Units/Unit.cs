using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Configurator.Core.Model.Units;

/// <summary>A unit that definitions may use. In base units a value is <c>(value + Offset) * Factor</c>.</summary>
/// <param name="Symbol">As written in definitions and printed.</param>
/// <param name="Source">Where the factor comes from.</param>
public sealed record Unit(string Symbol, Dimension Dimension, Rational Factor, Rational Offset, string Source)
{
    /// <summary>Values in the two can be compared: of one dimension and, for money, in one currency.</summary>
    public bool IsComparableWith(Unit other) =>
        Dimension == other.Dimension && (Dimension != Dimension.Money || Symbol == other.Symbol);

    public override string ToString() => Symbol;
}

/// <summary>The closed table of units. Each dimension's first unit is its base unit.</summary>
public static class UnitTable
{
    private const string Si = "SI, ISO 80000-1";
    private const string Yard = "international yard and pound, 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg), exact";
    private const string Awg = "ASTM B258 areas as rounded in trade tables";
    private const string Iso4217 = "ISO 4217 code; amounts in different currencies are not compared";

    /// <summary>AWG sizes and the area that trade tables give for them, in mm2.</summary>
    private static readonly ImmutableSortedDictionary<int, Rational> AwgAreas = new Dictionary<int, Rational>
    {
        // Source: trade tables of ASTM B258 sizes, from memory; 16 corroborated by a public NEC training table.
        [24] = Decimal("0.205"),
        [22] = Decimal("0.326"),
        [20] = Decimal("0.518"),
        [18] = Decimal("0.823"),
        [16] = Decimal("1.31"),
        [14] = Decimal("2.08"),
        [12] = Decimal("3.31"),
        [10] = Decimal("5.26"),
    }.ToImmutableSortedDictionary();

    public static ImmutableArray<Unit> All { get; } =
    [
        Scaled("mm", Dimension.Length, 1, Si),
        Scaled("cm", Dimension.Length, 10, Si),
        Scaled("m", Dimension.Length, 1000, Si),
        Scaled("in", Dimension.Length, Decimal("25.4"), Yard),
        Scaled("ft", Dimension.Length, Decimal("304.8"), Yard),
        Scaled("um", Dimension.Length, Decimal("0.001"), Si),
        Scaled("mA", Dimension.Current, 1, Si),
        Scaled("A", Dimension.Current, 1000, Si),
        Scaled("V", Dimension.Voltage, 1, Si),
        Scaled("W", Dimension.Power, 1, Si),
        Scaled("kW", Dimension.Power, 1000, Si),
        Scaled("mohm", Dimension.Resistance, 1, Si),
        Scaled("ohm", Dimension.Resistance, 1000, Si),
        Scaled("ms", Dimension.Time, 1, Si),
        Scaled("s", Dimension.Time, 1000, Si),
        Scaled("min", Dimension.Time, 60_000, Si),
        Scaled("h", Dimension.Time, 3_600_000, Si),
        Scaled("d", Dimension.Time, 86_400_000, Si),
        Scaled("1/min", Dimension.Rate, 1, Si),
        Scaled("m/min", Dimension.Speed, 1, Si),
        Scaled("bar", Dimension.Pressure, 1, Si),
        Scaled("kPa", Dimension.Pressure, Decimal("0.01"), Si),
        Scaled("psi", Dimension.Pressure, Psi(), "1 lbf/in2 with 1 lbf = 0.45359237 kg x 9.80665 m/s2, exact"),
        Scaled("l/min", Dimension.FreeAirFlow, 1, "free air at ISO 8778 reference, 20 degC and 100 kPa (from memory)"),
        Scaled(
            "scfm",
            Dimension.FreeAirFlow,
            Scfm(),
            "standard cubic foot: 14.696 psia as 101.325 kPa, 68 degF; 28.316846592 l, exact"
        ),
        Scaled("degC", Dimension.Temperature, 1, Si),
        new("degF", Dimension.Temperature, new(5, 9), -32, "definition, exact"),
        new("K", Dimension.Temperature, 1, Decimal("-273.15"), Si),
        Scaled("kg", Dimension.Mass, 1, Si),
        Scaled("lb", Dimension.Mass, Decimal("0.45359237"), Yard),
        Scaled("mm2", Dimension.CrossSection, 1, Si),
        Scaled("AWG", Dimension.CrossSection, 1, Awg),
        Scaled("percent", Dimension.Share, 1, "one hundredth"),
        Scaled("ppm", Dimension.Share, Decimal("0.0001"), "one millionth"),
        Scaled("deg", Dimension.Angle, 1, "ISO 80000-3, one degree of arc"),
        Scaled("N m", Dimension.Torque, 1, Si),
        Scaled("EUR", Dimension.Money, 1, Iso4217),
        Scaled("USD", Dimension.Money, 1, Iso4217),
    ];

    private static readonly FrozenDictionary<string, Unit> BySymbol = All.ToFrozenDictionary(
        unit => unit.Symbol,
        StringComparer.Ordinal
    );

    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);

    public static IEnumerable<Unit> Of(Dimension dimension) => All.Where(unit => unit.Dimension == dimension);

    /// <summary>The value in the dimension's base unit; null for an AWG size that is not in the table.</summary>
    public static Rational? InBase(Rational value, Unit unit)
    {
        if (unit.Symbol != "AWG")
        {
            return (value + unit.Offset) * unit.Factor;
        }

        return
            value.Denominator.IsOne && value.Numerator < 100 && AwgAreas.TryGetValue((int)value.Numerator, out var area)
            ? area
            : null;
    }

    private static Unit Scaled(string symbol, Dimension dimension, Rational factor, string source) =>
        new(symbol, dimension, factor, 0, source);

    private static Rational Decimal(string text) => Rational.Parse(text)!.Value;

    /// <summary>In bar: 0.45359237 x 9.80665 / 0.0254^2 Pa.</summary>
    private static Rational Psi() =>
        Decimal("0.45359237") * Decimal("9.80665") / (Decimal("0.0254") * Decimal("0.0254")) / 100_000;

    /// <summary>In l/min at 100 kPa and the same temperature (68 degF is 20 degC).</summary>
    private static Rational Scfm() => Decimal("28.316846592") * Decimal("101.325") / 100;
}
