using System.Buffers.Binary;
using System.Globalization;
using System.Numerics;
using System.Text;
using System.Text.Json;

namespace Configurator.Benchmarks.Examples;

/// <summary>Fields of process data and values as they travel. Source: IO-Link specification annex F.</summary>
internal static class DataExamples
{
    public static void Run(Given given, Answer answer)
    {
        var octets = given.Octets("octets", "octets_hex", "data", "pd");
        if (octets is not null && given.Element("fields") is { ValueKind: JsonValueKind.Array } fields)
        {
            var values = fields.EnumerateArray().Select(field => Field(octets, field)).ToList();
            answer.Say(values, "values", "decoded", "fields");
            foreach (var (field, value) in fields.EnumerateArray().Zip(values))
            {
                if (field.ValueKind == JsonValueKind.Object && field.TryGetProperty("name", out var name))
                {
                    answer.Say(value, name.GetString()!);
                }
            }
        }
        else if (given.Text("type", "data_type") is { } type && Width(type) is { } bits)
        {
            if (octets is not null && given.Element("value") is null)
            {
                answer.Say(Decode(type[..1].ToLowerInvariant(), octets, 0, Math.Min(bits, octets.Length * 8)), "value", "decoded");
            }
            else if (given.Element("value") is { } value && Encode(type, bits, value) is { } encoded)
            {
                answer.Say(string.Join(' ', encoded.Select(octet => octet.ToString("X2", CultureInfo.InvariantCulture))), "octets", "octets_hex", "encoded");
            }
        }
    }

    private static object Field(byte[] octets, JsonElement field) =>
        field.ValueKind == JsonValueKind.Array
            ? Decode(field[0].GetString()!, octets, field[1].GetInt32(), field.GetArrayLength() > 2 ? field[2].GetInt32() : 1)
            : Decode(
                field.GetProperty("type").GetString()!,
                octets,
                Whole(field, "offset", "bit_offset", "bitOffset"),
                Whole(field, "length", "bits", "bit_length", "bitLength"));

    private static int Whole(JsonElement field, params string[] names) =>
        names.Select(name => field.TryGetProperty(name, out var value) ? value.GetInt32() : (int?)null).FirstOrDefault(value => value is not null) ?? 1;

    /// <summary>Bits are counted from the last octet's lowest.</summary>
    private static object Decode(string type, byte[] octets, int offset, int bits)
    {
        var raw = (new BigInteger(octets, isUnsigned: true, isBigEndian: true) >> offset) & ((BigInteger.One << bits) - 1);
        return type.ToLowerInvariant()[0] switch
        {
            'b' => !raw.IsZero,
            'i' when !(raw >> (bits - 1)).IsZero => (double)(raw - (BigInteger.One << bits)),
            'f' => Math.Round(BitConverter.Int32BitsToSingle((int)(uint)raw), 7),
            's' => Encoding.UTF8.GetString(octets).TrimEnd('\0'),
            _ => (double)raw,
        };
    }

    private static byte[]? Encode(string type, int bits, JsonElement value)
    {
        var text = value.ValueKind == JsonValueKind.String ? value.GetString()! : value.GetRawText();
        if (type.StartsWith("String", StringComparison.Ordinal))
        {
            var letters = Encoding.UTF8.GetBytes(text);
            return [.. letters, .. new byte[Math.Max(0, (bits / 8) - letters.Length)]];
        }

        if (type.StartsWith("Bool", StringComparison.Ordinal))
        {
            return [text == "true" ? (byte)0xFF : (byte)0];
        }

        if (type.StartsWith("Float", StringComparison.Ordinal))
        {
            var octets = new byte[4];
            BinaryPrimitives.WriteSingleBigEndian(octets, float.Parse(text, CultureInfo.InvariantCulture));
            return octets;
        }

        return Given.ValueOf(text) is { Denominator.IsOne: true } whole ? Fixed(whole.Numerator, (bits + 7) / 8) : null;
    }

    private static byte[] Fixed(BigInteger value, int octets) =>
        [.. Enumerable.Range(0, octets).Select(at => (byte)((value >> (8 * (octets - 1 - at))) & 0xFF))];

    /// <summary>The digits after the T of the type; 32 for a float, 8 for a truth.</summary>
    private static int? Width(string type)
    {
        if (type.StartsWith("Float", StringComparison.Ordinal))
        {
            return 32;
        }

        if (type.StartsWith("Bool", StringComparison.Ordinal))
        {
            return 8;
        }

        var digits = string.Concat(type.SkipWhile(character => !char.IsAsciiDigit(character)).TakeWhile(char.IsAsciiDigit));
        var width = digits.Length > 0 ? int.Parse(digits, CultureInfo.InvariantCulture) : (int?)null;
        return type.StartsWith("String", StringComparison.Ordinal) ? width * 8 ?? 0
            : type.Contains("nteger", StringComparison.Ordinal) ? width
            : null;
    }
}
