using System.Globalization;
using System.Numerics;
using Configurator.Core.Model;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Model;

/// <summary>The rule of octets and bits, against published records: a value is read at the bit offset that follows from
/// where our definitions say it stands.</summary>
public class ProcessDataTests
{
    /// <summary>Where we would write the values of each record: type, bits, octet, bit.</summary>
    private static readonly Dictionary<string, (ProcessType Type, int Bits, int Octet, int Bit)[]> Places = new()
    {
        ["UIntegerT16"] = [(ProcessType.UIntegerT, 16, 0, 0)],
        ["IntegerT16"] = [(ProcessType.IntegerT, 16, 0, 0)],
        ["IntegerT8"] = [(ProcessType.IntegerT, 8, 0, 0)],
        ["UIntegerT24"] = [(ProcessType.UIntegerT, 24, 0, 0)],
        ["RecordT32: u16@16, u8@8, bool@0, bool@1"] =
            [(ProcessType.UIntegerT, 16, 0, 0), (ProcessType.UIntegerT, 8, 2, 0), (ProcessType.BooleanT, 1, 3, 0), (ProcessType.BooleanT, 1, 3, 1)],
        ["RecordT16: u8@8, bool@0, bool@1"] = [(ProcessType.UIntegerT, 8, 0, 0)],
        ["RecordT32: i16@16 value, i8@8 scale, bool@0 SSC1, bool@1 SSC2"] =
            [(ProcessType.IntegerT, 16, 0, 0), (ProcessType.IntegerT, 8, 2, 0), (ProcessType.BooleanT, 1, 3, 0), (ProcessType.BooleanT, 1, 3, 1)],
        ["RecordT16: u14@2, bool@1, bool@0"] =
            [(ProcessType.UIntegerT, 14, 0, 2), (ProcessType.BooleanT, 1, 1, 1), (ProcessType.BooleanT, 1, 1, 0)],
    };

    public static TheoryData<string, string, string> Vectors =>
        [.. CheckData.Rows("reference/iolink_data_type_vectors.csv")
            .Where(row => Places.ContainsKey(row["type"]))
            .Select(row => (row["type"], row["value"], row["octets_hex"]))];

    // Source: reference row of each vector (iolink_data_type_vectors.csv; Annex F and a public decoder's tests).
    [Theory]
    [MemberData(nameof(Vectors))]
    public void A_published_record_is_read_where_the_rule_puts_its_values(string type, string values, string octets)
    {
        var bytes = octets.Split(' ').Select(octet => byte.Parse(octet, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToArray();
        var expected = values.Split(", ").Select(Number).ToList();
        var read = Places[type].Select(place => (BigInteger?)Read(bytes, place)).ToList();
        Assert.Equal(expected.Where(value => value is not null), read.Where((_, i) => expected[i] is not null));
    }

    [Fact]
    public void All_records_of_the_table_are_read() => Assert.Equal(9, Vectors.Count);

    // Source: the type column of the same table names the offsets: u16@16, u8@8, bool@0, bool@1; u14@2, bool@1.
    [Theory]
    [InlineData(16, 0, 0, 4, 16)]
    [InlineData(8, 2, 0, 4, 8)]
    [InlineData(1, 3, 1, 4, 1)]
    [InlineData(14, 0, 2, 2, 2)]
    [InlineData(1, 1, 1, 2, 1)]
    public void A_bit_offset_is_counted_from_bit_0_of_the_last_octet(int bits, int octet, int bit, int octets, int offset) =>
        Assert.Equal(offset, Item(ProcessType.UIntegerT, bits, octet, bit).BitOffset(octets));

    private static BigInteger Read(byte[] bytes, (ProcessType Type, int Bits, int Octet, int Bit) place)
    {
        var all = new BigInteger(bytes, isUnsigned: true, isBigEndian: true);
        var offset = Item(place.Type, place.Bits, place.Octet, place.Bit).BitOffset(bytes.Length);
        var raw = (all >> offset) & ((BigInteger.One << place.Bits) - 1);
        return place.Type == ProcessType.IntegerT && !(raw >> (place.Bits - 1)).IsZero ? raw - (BigInteger.One << place.Bits) : raw;
    }

    private static ProcessItem Item(ProcessType type, int bits, int octet, int bit) =>
        new(new("value", default(SourceSpan)), Text.Empty, type, bits, octet, bit);

    private static BigInteger? Number(string text) => text switch
    {
        "true" => BigInteger.One,
        "false" => BigInteger.Zero,
        "x" => null,
        _ when text.StartsWith("0x", StringComparison.Ordinal) => BigInteger.Parse("0" + text[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture),
        _ => BigInteger.Parse(text, CultureInfo.InvariantCulture),
    };
}
