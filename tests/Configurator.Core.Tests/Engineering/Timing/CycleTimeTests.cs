using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Timing;

// Source of the rows: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) table B.3, by tests/Data/reference.
public class CycleTimeTests
{
    public static TheoryData<string, string, string> Decoded { get; } = Vectors("decode");

    public static TheoryData<string, string, string> Encoded { get; } = Vectors("encode");

    [Theory]
    [MemberData(nameof(Decoded))]
    public void An_octet_stands_for_a_cycle_or_for_none(string octet, string milliseconds, string status) =>
        Assert.Equal(status == "invalid" ? null : Rational.Parse(milliseconds), CycleTime.Decode(Convert.ToByte(octet, 16)));

    [Theory]
    [MemberData(nameof(Encoded))]
    public void A_cycle_is_stated_by_the_next_octet_that_is_not_below(string milliseconds, string octet, string status) =>
        Assert.Equal(status == "invalid" ? null : Convert.ToByte(octet, 16), CycleTime.Encode(Rational.Parse(milliseconds)!.Value));

    // Law, over all octets.
    [Fact]
    public void Encoding_what_was_decoded_gives_the_octet_back() => Assert.All(
        Enumerable.Range(1, 255).Select(octet => (byte)octet).Where(octet => CycleTime.Decode(octet) is not null),
        octet => Assert.Equal(octet, CycleTime.Encode(CycleTime.Decode(octet)!.Value)));

    // Law, over all octets.
    [Fact]
    public void A_higher_octet_stands_for_a_longer_cycle()
    {
        var cycles = Enumerable.Range(1, 255).Select(octet => CycleTime.Decode((byte)octet)).OfType<Rational>().ToList();
        Assert.Equal(cycles.Order(), cycles);
        Assert.Equal(188, cycles.Count);
    }

    private static TheoryData<string, string, string> Vectors(string direction)
    {
        var data = new TheoryData<string, string, string>();
        foreach (var row in CheckData.Rows("reference/iolink_cycle_time_vectors.csv").Where(row => row["direction"] == direction))
        {
            data.Add(row["input"], direction == "decode" ? row["cycle_ms"] : row["octet"], row["status"]);
        }

        return data;
    }
}
