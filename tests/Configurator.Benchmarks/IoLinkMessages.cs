using System.Globalization;
using Configurator.Core.Engineering.Timing;

namespace Configurator.Benchmarks;

/// <summary>Octets of messages as they travel. Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) A.1.</summary>
internal static class IoLinkMessages
{
    private const int Seed = 0x52;
    private const int FlagBits = 0xC0;

    private static readonly string[] Page =
    [
        "MasterCommand", "MasterCycleTime", "MinCycleTime", "M-sequenceCapability", "RevisionID", "ProcessDataIn", "ProcessDataOut",
        "VendorID1", "VendorID2", "DeviceID1", "DeviceID2", "DeviceID3", "FunctionID1", "FunctionID2", "reserved", "SystemCommand",
    ];

    /// <summary>The check octet, flags in bits 6 and 7: all octets and the seed, folded from eight bits to six.</summary>
    public static byte CheckOctet(ReadOnlySpan<byte> others, byte flags)
    {
        var x = Seed ^ (flags & FlagBits);
        foreach (var octet in others)
        {
            x ^= octet;
        }

        int Bit(int at) => (x >> at) & 1;
        var folded =
            ((Bit(7) ^ Bit(5) ^ Bit(3) ^ Bit(1)) << 5) | ((Bit(6) ^ Bit(4) ^ Bit(2) ^ Bit(0)) << 4)
            | ((Bit(7) ^ Bit(6)) << 3) | ((Bit(5) ^ Bit(4)) << 2) | ((Bit(3) ^ Bit(2)) << 1) | (Bit(1) ^ Bit(0));
        return (byte)((flags & FlagBits) | folded);
    }

    /// <summary>The master's check octet stands second, the device's last.</summary>
    public static bool IsSound(ReadOnlySpan<byte> message, int checkAt)
    {
        byte[] others = [.. message[..checkAt], .. message[(checkAt + 1)..]];
        return message[checkAt] == CheckOctet(others, message[checkAt]);
    }

    /// <summary>What one exchange reads or writes, in words.</summary>
    public static string Meaning(ReadOnlySpan<byte> master, ReadOnlySpan<byte> device)
    {
        var (isRead, channel, address) = ((master[0] & 0x80) != 0, (master[0] >> 5) & 3, master[0] & 31);
        var name = channel == 1 && address < Page.Length ? Page[address] : FormattableString.Invariant($"{ChannelName(channel)} {address}");
        var octet = isRead ? device[0] : master[^1];
        return $"{(isRead ? "read" : "write")} {name} -> {Value(name, octet)}";
    }

    private static string Value(string name, byte octet) =>
        name is "MinCycleTime" or "MasterCycleTime" && CycleTime.Decode(octet) is { } cycle
            ? cycle.ToDouble().ToString("0.0", CultureInfo.InvariantCulture) + " ms"
        : name == "RevisionID" ? FormattableString.Invariant($"{octet >> 4}.{octet & 15}")
        : name is "ProcessDataIn" or "ProcessDataOut" && ProcessDataLength.Decode(octet) is { } length
            ? FormattableString.Invariant($"{length.Octets} {(length.Octets == 1 ? "octet" : "octets")}")
        : $"0x{octet:X2}";

    private static string ChannelName(int channel) =>
        channel switch
        {
            0 => "process",
            1 => "page",
            2 => "diagnosis",
            _ => "ISDU",
        };
}
