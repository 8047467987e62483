using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>The octet in which a device states its shortest cycle: the base in bits 6 and 7, the multiplier in bits 0
/// to 5. Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) B.1.3, table B.3;
/// corroborated.</summary>
public static class CycleTime
{
    private const int MultiplierMax = 63;
    private const int BaseBits = 6;
    private const int FirstMultiplierMin = 4;

    private static readonly (Rational Offset, Rational Step)[] Bases =
    [
        (0, Rational.Of(0.1m)),
        (Rational.Of(6.4m), Rational.Of(0.4m)),
        (32, Rational.Of(1.6m)),
    ];

    /// <summary>Milliseconds: 0 where the octet says nothing, null where it is not allowed.</summary>
    public static Rational? Decode(byte octet)
    {
        var (numberOfBase, multiplier) = (octet >> BaseBits, octet & MultiplierMax);
        if (octet == 0)
        {
            return 0;
        }

        return numberOfBase >= Bases.Length || (numberOfBase == 0 && multiplier < FirstMultiplierMin)
            ? null
            : Bases[numberOfBase].Offset + (multiplier * Bases[numberOfBase].Step);
    }

    /// <summary>The octet of the shortest cycle that is not below so many ms; null below 0.4 ms and above 132.8 ms,
    /// which no octet can state.</summary>
    public static byte? Encode(Rational milliseconds) =>
        milliseconds < Rational.Of(0.4m) ? null : AtLeast(milliseconds);

    /// <summary>The shortest cycle, in ms, that a device can state and keep with an M-sequence that takes so
    /// long.</summary>
    public static Rational? ShortestFor(Rational milliseconds) =>
        AtLeast(milliseconds) is { } octet ? Decode(octet) : null;

    private static byte? AtLeast(Rational milliseconds) =>
        Enumerable
            .Range(0, Bases.Length << BaseBits)
            .Select(octet => (byte)octet)
            .Where(octet => octet != 0 && Decode(octet) >= milliseconds)
            .Select(octet => (byte?)octet)
            .FirstOrDefault();
}
