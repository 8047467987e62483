using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>The inputs of an example. Numbers are found by what they are called, whatever their unit.</summary>
/// <param name="Table">Reads a table by the name that an input gives; null where there is none.</param>
internal sealed record Given(ImmutableSortedDictionary<string, JsonElement> Inputs, Func<string, CsvTable?> Table)
{
    /// <summary>The first input with one of these names, in the base unit of its kind.</summary>
    public Rational? Number(Kind kind, params string[] names) =>
        Find(kind, names) is { } found && ValueOf(found.Value) is { } value ? Based(found.Unit, value) : null;

    public ImmutableArray<Rational>? Numbers(Kind kind, params string[] names) =>
        Find(kind, names) is { Value.ValueKind: JsonValueKind.Array } found
        && found.Value.EnumerateArray().Select(ValueOf).ToList() is var values
        && values.TrueForAll(value => value is not null)
            ? [.. values.Select(value => Based(found.Unit, value!.Value))]
            : null;

    public int? Whole(params string[] names) =>
        Number(Kind.Plain, names) is { Denominator.IsOne: true } value && value.Numerator.GetBitLength() < 31 ? (int)value.Numerator : null;

    public string? Text(params string[] names) =>
        names.Select(Element).FirstOrDefault(value => value is not null) is { } element
            ? element.ValueKind switch
            {
                JsonValueKind.String => element.GetString(),
                JsonValueKind.Array => string.Join('/', element.EnumerateArray().Select(item => item.ToString())),
                _ => element.GetRawText(),
            }
            : null;

    public bool? Flag(params string[] names) =>
        names.Select(Element).FirstOrDefault(value => value is not null)?.ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => null,
        };

    public JsonElement? Element(string name) =>
        Inputs.TryGetValue(name, out var exact) ? exact
        : Inputs.FirstOrDefault(input => input.Key.Equals(name, StringComparison.OrdinalIgnoreCase)) is { Key: not null } near ? near.Value
        : null;

    /// <summary>Octets written as <c>A2 00</c>, <c>0x19</c>, <c>A200</c>, or as a list of numbers.</summary>
    public byte[]? Octets(params string[] names) =>
        names.Select(Element).FirstOrDefault(value => value is not null) is { } element ? OctetsOf(element) : null;

    public Given With(string name, JsonElement value) => this with { Inputs = Inputs.SetItem(name, value) };

    public static Rational? ValueOf(JsonElement element) =>
        element.ValueKind switch
        {
            JsonValueKind.Number => ValueOf(element.GetRawText()),
            JsonValueKind.String => ValueOf(element.GetString()!),
            _ => null,
        };

    public static Rational? ValueOf(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            return long.TryParse(trimmed[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var hex) ? hex : null;
        }

        var parts = trimmed.Split('/');
        return parts.Length == 2 && ValueOf(parts[0]) is { } above && ValueOf(parts[1]) is { } below && below != 0 ? above / below
            : decimal.TryParse(trimmed, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? Rational.Of(value)
            : null;
    }

    public static byte[]? OctetsOf(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            var items = element.EnumerateArray().Select(item => item.ValueKind == JsonValueKind.String ? OctetsOf(item) : Octet(ValueOf(item))).ToList();
            return items.Contains(null) ? null : [.. items.SelectMany(item => item!)];
        }

        if (element.ValueKind == JsonValueKind.Number)
        {
            return Octet(ValueOf(element));
        }

        var digits = string.Concat((element.GetString() ?? "").Split([' ', ',', '-', ':'], StringSplitOptions.RemoveEmptyEntries)
            .Select(part => part.StartsWith("0x", StringComparison.OrdinalIgnoreCase) ? part[2..] : part)
            .Select(part => part.Length % 2 == 1 ? "0" + part : part));
        return digits.All(char.IsAsciiHexDigit) && digits.Length > 0 ? Convert.FromHexString(digits) : null;
    }

    private static byte[]? Octet(Rational? value) =>
        value is { Denominator.IsOne: true } whole && whole >= 0 && whole <= 255 ? [(byte)whole.Numerator] : null;

    private static Rational Based(ExampleUnit? unit, Rational value) => unit?.ToBase(value) ?? value;

    /// <summary>As written first, then without regard to case: <c>T</c> is a temperature beside <c>t</c>, a time.</summary>
    private (JsonElement Value, ExampleUnit? Unit)? Find(Kind kind, string[] names)
    {
        foreach (var name in names)
        {
            foreach (var (key, value) in Inputs)
            {
                var (stem, unit) = Units.Split(key, kind);
                if (stem.Equals(name, StringComparison.OrdinalIgnoreCase) && IsCase(key, name) && (unit is not null || IsUnitless(key, stem)))
                {
                    return (value, unit);
                }
            }
        }

        return null;
    }

    /// <summary>A name of one letter means that case, if the other case is an input too.</summary>
    private bool IsCase(string key, string name) =>
        name.Length > 1 || key.StartsWith(name, StringComparison.Ordinal) || !Inputs.Keys.Any(other =>
            other.StartsWith(name, StringComparison.Ordinal) && (other.Length == 1 || other[1] == '_'));

    private static bool IsUnitless(string key, string stem) => key.Length == stem.Length;
}
