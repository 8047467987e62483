namespace Configurator.Core.Engineering.Timing;

/// <summary>What a device's M-sequenceCapability octet says. Source: IO-Link Interface and System Specification v1.1.x
/// (IEC 61131-9) B.1.4; corroborated.</summary>
/// <param name="HasIsdu">Parameters beyond the first page can be read and written.</param>
public sealed record MSequenceCapability(bool HasIsdu, int OperateCode, int PreoperateCode)
{
    private const int PreoperateShift = 4;

    public static MSequenceCapability Decode(byte octet) =>
        new((octet & 1) == 1, (octet >> 1) & 7, (octet >> PreoperateShift) & 3);

    /// <summary>Octets of on-request data in each message in operation; null for the reserved codes 2 and 3. Code 0 has
    /// one, but for interleaved data.</summary>
    public int? OperateOctets =>
        OperateCode switch
        {
            0 or 4 => 1,
            1 or 5 => 2,
            6 => 8,
            7 => 32,
            _ => null,
        };

    public int PreoperateOctets => MSequences.InPreoperate(PreoperateCode)!.OnRequestOctets;

    public byte Encode() => (byte)((HasIsdu ? 1 : 0) | (OperateCode << 1) | (PreoperateCode << PreoperateShift));
}

/// <summary>What a device's ProcessDataIn or ProcessDataOut octet says. Source: the same, B.1.6;
/// corroborated.</summary>
/// <param name="Bits">Length, in bits.</param>
/// <param name="HasSwitching">It can work as a plain switch (SIO).</param>
public sealed record ProcessDataLength(int Bits, bool HasSwitching)
{
    private const int CountedInOctets = 0x80;
    private const int Switching = 0x40;
    private const int OctetsMin = 3;
    private const int BitsMax = 16;

    public int Octets => (Bits + 7) / 8;

    /// <summary>Null where the octet is not allowed: up to two octets are counted in bits, more in octets.</summary>
    public static ProcessDataLength? Decode(byte octet)
    {
        var (length, isInOctets) = (octet & 0x1F, (octet & CountedInOctets) != 0);
        var isAllowed = isInOctets ? length + 1 >= OctetsMin : length <= BitsMax;
        return isAllowed ? new(isInOctets ? (length + 1) * 8 : length, (octet & Switching) != 0) : null;
    }
}
