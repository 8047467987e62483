using System.Globalization;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;
using CsCheck;

namespace Configurator.Core.Tests.Engineering.Timing;

// Source of the rows: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) A.2, A.3.6 and tables A.8 to A.10, by
// tests/Data/reference.
public class MSequenceTests
{
    private static readonly int[] Room = [1, 2, 8];

    public static TheoryData<string, int, int, int, int, string> Frames { get; } = ReadFrames();

    [Theory]
    [MemberData(nameof(Frames))]
    public void The_longest_message_follows_from_octets_and_rate(string com, int input, int output, int onRequest, int bits, string octet)
    {
        var rate = Enum.Parse<BitRate>(com, ignoreCase: true);
        var sequence = MSequences.OfOctets(input, output, onRequest);
        Assert.Equal(bits, sequence.BitsMax);
        var cycle = CycleTime.ShortestFor(sequence.MillisecondsMax(rate));
        Assert.Equal(octet, cycle is { } shortest ? $"0x{CycleTime.Encode(shortest):X2}" : "");
    }

    // Source: tests/Data/reference/iolink_msequence_types.csv.
    [Theory]
    [InlineData("TYPE_0", 0, 0, 1, 2, 2, 3, 1)]
    [InlineData("TYPE_1_2", 0, 0, 2, 2, 3, 4, 1)]
    [InlineData("TYPE_2_1", 1, 0, 1, 2, 3, 3, 2)]
    [InlineData("TYPE_2_2", 2, 0, 1, 2, 4, 3, 3)]
    [InlineData("TYPE_2_3", 0, 1, 1, 3, 2, 4, 1)]
    [InlineData("TYPE_2_4", 0, 2, 1, 4, 2, 5, 1)]
    [InlineData("TYPE_2_5", 1, 1, 1, 3, 3, 4, 2)]
    [InlineData("TYPE_2_V", 8, 3, 2, 5, 11, 7, 9)]
    public void A_type_has_its_octets(string type, int input, int output, int onRequest, int mRead, int nRead, int mWrite, int nWrite)
    {
        var sequence = MSequences.OfOctets(input, output, onRequest);
        Assert.Equal(type, sequence.Type);
        Assert.Equal((mRead, nRead), sequence.OctetsRead);
        Assert.Equal((mWrite, nWrite), sequence.OctetsWrite);
    }

    // Source: tests/Data/reference/iolink_msequence_capability_map.csv.
    [Theory]
    [InlineData(0, 0, 0, "TYPE_0", 1)]
    [InlineData(1, 0, 0, "TYPE_1_2", 2)]
    [InlineData(6, 0, 0, "TYPE_1_V", 8)]
    [InlineData(7, 0, 0, "TYPE_1_V", 32)]
    [InlineData(0, 24, 0, "TYPE_1_1", 2)]
    [InlineData(0, 8, 0, "TYPE_2_1", 1)]
    [InlineData(0, 9, 0, "TYPE_2_2", 1)]
    [InlineData(0, 0, 16, "TYPE_2_4", 1)]
    [InlineData(0, 8, 8, "TYPE_2_5", 1)]
    [InlineData(0, 16, 1, "TYPE_2_V", 1)]
    [InlineData(4, 24, 0, "TYPE_2_V", 1)]
    [InlineData(5, 1, 0, "TYPE_2_V", 2)]
    [InlineData(6, 0, 8, "TYPE_2_V", 8)]
    [InlineData(7, 256, 256, "TYPE_2_V", 32)]
    public void The_code_of_a_device_decides_its_type(int code, int inputBits, int outputBits, string type, int onRequest)
    {
        var sequence = MSequences.InOperate(code, inputBits, outputBits)!;
        Assert.Equal((type, onRequest), (sequence.Type, sequence.OnRequestOctets));
    }

    [Theory]
    [InlineData(1, 8, 0)]
    [InlineData(2, 0, 0)]
    [InlineData(3, 8, 8)]
    [InlineData(4, 16, 16)]
    public void A_code_that_does_not_go_with_the_data_has_no_type(int code, int inputBits, int outputBits) =>
        Assert.Null(MSequences.InOperate(code, inputBits, outputBits));

    // Law: every octet takes time, and a faster rate less of it.
    [Fact]
    public void Another_octet_never_shortens_a_message_and_a_faster_rate_never_lengthens_it() =>
        Gen.Select(Gen.Int[0, 31], Gen.Int[0, 31], Gen.Int[0, 2], Gen.Int[0, 1]).Sample((input, output, room, rate) =>
        {
            var onRequest = Room[room];
            var (slow, fast) = ((BitRate)rate, (BitRate)(rate + 1));
            var longest = Longest(input, output, onRequest, slow);
            return Longest(input + 1, output, onRequest, slow) > longest
                && Longest(input, output + 1, onRequest, slow) > longest
                && Longest(input, output, onRequest * 4, slow) > longest
                && Longest(input, output, onRequest, fast) < longest;
        });

    // Law: the longest is longer than the shortest, and the age of an input lies between a message and a cycle more.
    [Fact]
    public void An_input_is_as_old_as_a_message_at_least_and_a_cycle_more_at_most() => Gen.Select(Gen.Int[0, 32], Gen.Int[0, 32]).Sample((input, output) =>
    {
        var sequence = MSequences.OfOctets(input, output, 1);
        var longest = sequence.MillisecondsMax(BitRate.Com2);
        var age = InputAge.Of(CycleTime.ShortestFor(longest)!.Value, longest);
        return sequence.MillisecondsMin(BitRate.Com2) < longest && age.MillisecondsMin == longest && age.Jitter >= longest;
    });

    // Source: tests/Data/reference/iolink_parameter_octet_vectors.csv.
    [Theory]
    [InlineData(0x01, true, 0, 0, 1, 1)]
    [InlineData(0x19, true, 4, 1, 1, 2)]
    [InlineData(0x1B, true, 5, 1, 2, 2)]
    [InlineData(0x2D, true, 6, 2, 8, 8)]
    [InlineData(0x3F, true, 7, 3, 32, 32)]
    public void A_capability_octet_says_what_it_says(int octet, bool isdu, int operate, int preoperate, int od, int preOd)
    {
        var capability = MSequenceCapability.Decode((byte)octet);
        Assert.Equal(new(isdu, operate, preoperate), capability);
        Assert.Equal((od, preOd), (capability.OperateOctets, capability.PreoperateOctets));
        Assert.Equal(octet, capability.Encode());
    }

    // Source: tests/Data/reference/iolink_parameter_octet_vectors.csv.
    [Theory]
    [InlineData(0x00, 0, false)]
    [InlineData(0x01, 1, false)]
    [InlineData(0x08, 8, false)]
    [InlineData(0x10, 16, false)]
    [InlineData(0x48, 8, true)]
    [InlineData(0x82, 24, false)]
    [InlineData(0x9F, 256, false)]
    [InlineData(0xCB, 96, true)]
    public void A_process_data_octet_says_a_length(int octet, int bits, bool hasSwitching) =>
        Assert.Equal(new(bits, hasSwitching), ProcessDataLength.Decode((byte)octet));

    [Theory]
    [InlineData(0x11)]
    [InlineData(0x80)]
    [InlineData(0x81)]
    public void A_process_data_octet_that_is_not_allowed_says_none(int octet) => Assert.Null(ProcessDataLength.Decode((byte)octet));

    // Source: IOL-08 and IOL-09 by hand; the longest from memory.
    [Theory]
    [InlineData(2, false, 1, 5)]
    [InlineData(2, true, 232, 238)]
    [InlineData(2, true, 233, null)]
    public void A_parameter_request_has_its_length(int index, bool subindex, int data, int? octets) =>
        Assert.Equal(octets, Isdu.Length(index, subindex, data));

    private static Rational Longest(int input, int output, int onRequest, BitRate rate) =>
        MSequences.OfOctets(input, output, onRequest).MillisecondsMax(rate);

    private static TheoryData<string, int, int, int, int, string> ReadFrames()
    {
        var data = new TheoryData<string, int, int, int, int, string>();
        foreach (var row in CheckData.Rows("reference/iolink_min_cycle_times.csv").Where(row => row["m_sequence_type"] != "TYPE_1_1"))
        {
            data.Add(row["com"], Whole(row["pd_in_octets"]), Whole(row["pd_out_octets"]), Whole(row["od_octets"]), Whole(row["tbits_max"]), row["min_cycle_octet"]);
        }

        return data;
    }

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
