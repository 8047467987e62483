using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Which M-sequence a device uses. Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9)
/// tables A.8 to A.10; corroborated.</summary>
public static class MSequences
{
    private const int InterleavedOctets = 2;

    /// <summary>Before operation: code 0 to 3.</summary>
    /// <returns>Null for a code that is not used.</returns>
    public static MSequence? InPreoperate(int code) =>
        code switch
        {
            0 => new("TYPE_0", 0, 0, 1),
            1 => new("TYPE_1_2", 0, 0, 2),
            2 => new("TYPE_1_V", 0, 0, 8),
            3 => new("TYPE_1_V", 0, 0, 32),
            _ => null,
        };

    /// <summary>In operation, by the code of the capability octet and the process data in bits.</summary>
    /// <returns>Null where the code may not be used with that data. Interleaved data (TYPE_1_1) moves two octets in
    /// each message, so that all of it takes several cycles.</returns>
    public static MSequence? InOperate(int code, int inputBits, int outputBits)
    {
        var (input, output) = (Octets(inputBits), Octets(outputBits));
        return (code, input + output) switch
        {
            (0, 0) => new("TYPE_0", 0, 0, 1),
            (1, 0) => new("TYPE_1_2", 0, 0, 2),
            (6, 0) => new("TYPE_1_V", 0, 0, 8),
            (7, 0) => new("TYPE_1_V", 0, 0, 32),
            (0, _) => input > 2 || output > 2
                ? new("TYPE_1_1", 0, 0, InterleavedOctets)
                : new(Short(input, output), input, output, 1),
            (4, _) when input > 2 || output > 2 => new("TYPE_2_V", input, output, 1),
            (5, > 0) => new("TYPE_2_V", input, output, 2),
            (6, _) => new("TYPE_2_V", input, output, 8),
            (7, _) => new("TYPE_2_V", input, output, 32),
            _ => null,
        };
    }

    /// <summary>In operation, by what a data sheet states: octets of process data and of on-request data.</summary>
    public static MSequence OfOctets(int input, int output, int onRequest) =>
        (input + output, onRequest) switch
        {
            (0, 1) => new("TYPE_0", 0, 0, 1),
            (0, 2) => new("TYPE_1_2", 0, 0, 2),
            (0, _) => new("TYPE_1_V", 0, 0, onRequest),
            (_, 1) when input <= 2 && output <= 2 => new(Short(input, output), input, output, 1),
            _ => new("TYPE_2_V", input, output, onRequest),
        };

    public static MSequence Of(IoLinkData data) => OfOctets(data.InputOctets, data.OutputOctets, data.OnRequestOctets);

    private static string Short(int input, int output) =>
        (input, output) switch
        {
            (1, 0) => "TYPE_2_1",
            (2, 0) => "TYPE_2_2",
            (0, 1) => "TYPE_2_3",
            (0, 2) => "TYPE_2_4",
            (1, 1) => "TYPE_2_5",
            _ => "TYPE_2_V",
        };

    private static int Octets(int bits) => (bits + 7) / 8;
}
