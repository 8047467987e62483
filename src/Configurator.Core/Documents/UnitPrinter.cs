using System.Collections.Frozen;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents;

/// <summary>Prints quantities for readers, in the units that the site asks for.</summary>
public sealed record UnitPrinter(UnitStyle Style)
{
    private const int ConvertedDecimals = 2;

    private static readonly FrozenDictionary<string, string> Counterparts = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["mm"] = "in",
        ["cm"] = "in",
        ["m"] = "ft",
        ["bar"] = "psi",
        ["kPa"] = "psi",
        ["degC"] = "degF",
        ["kg"] = "lb",
        ["l/min"] = "scfm",
        ["in"] = "mm",
        ["ft"] = "m",
        ["psi"] = "bar",
        ["degF"] = "degC",
        ["lb"] = "kg",
        ["scfm"] = "l/min",
        ["AWG"] = "mm2",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> UsUnits = new[]
    {
        "in",
        "ft",
        "psi",
        "degF",
        "lb",
        "scfm",
        "AWG",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> Printed = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["degC"] = "°C",
        ["degF"] = "°F",
        ["mm2"] = "mm²",
        ["percent"] = "%",
        ["1/min"] = "min⁻¹",
        ["d"] = "days",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public string Of(Quantity? quantity)
    {
        if (quantity is null)
        {
            return "";
        }

        var written = Print(quantity.Value.ToString(), quantity.Unit);
        var isUs = UsUnits.Contains(quantity.Unit.Symbol);
        if (
            !Counterparts.TryGetValue(quantity.Unit.Symbol, out var symbol)
            || (Style == UnitStyle.Us && isUs)
            || (Style == UnitStyle.Metric && !isUs)
        )
        {
            return written;
        }

        var other = Print(
            InUnit(quantity, UnitTable.Find(symbol)!).ToString(ConvertedDecimals),
            UnitTable.Find(symbol)!
        );
        return Style == UnitStyle.Both ? $"{written} ({other})" : other;
    }

    public static string Symbol(Unit unit) => Printed.GetValueOrDefault(unit.Symbol, unit.Symbol);

    private static Rational InUnit(Quantity quantity, Unit unit) => (quantity.InBase / unit.Factor) - unit.Offset;

    private static string Print(string value, Unit unit) =>
        unit.Symbol == "AWG" ? $"AWG {value}" : $"{value} {Symbol(unit)}";
}
