using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>What a device exchanges in every cycle, item by item; a side that nobody describes is empty.</summary>
public sealed record ProcessData(ImmutableArray<ProcessItem> Inputs, ImmutableArray<ProcessItem> Outputs);

/// <summary>
/// One value in a device's process data. Octet 0 travels first, and of a value that takes several octets the most
/// significant one travels first.
/// </summary>
/// <param name="Bits">How many bits it takes.</param>
/// <param name="Octet">The first octet that it touches, from 0 in the order in which they travel.</param>
/// <param name="Bit">Its least significant bit, in the last octet that it touches; 0 is the octet's lowest.</param>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Annex F; corroborated.</remarks>
public sealed record ProcessItem(Located<string> Name, Text Title, ProcessType Type, int Bits, int Octet, int Bit)
{
    private const int BitsOfOctet = 8;

    public ValueRange Range { get; init; } = ValueRange.None;

    /// <summary>The port of a hub whose plain signal it carries; null for anything else.</summary>
    public Located<int>? Port { get; init; }

    /// <summary>The last octet that it touches.</summary>
    public int LastOctet => Octet + ((Bit + Bits - 1) / BitsOfOctet);

    public bool IsCalled(string name) => Name.Value == name;

    /// <summary>As device descriptions count: from bit 0 of the last octet of all, which travels last.</summary>
    public int BitOffset(int octets) => (BitsOfOctet * (octets - 1 - LastOctet)) + Bit;
}

/// <summary>Data types that process data are made of.</summary>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Annex F; corroborated, Float32T
/// from
/// memory.</remarks>
public enum ProcessType
{
    BooleanT,
    UIntegerT,
    IntegerT,
    Float32T,
}

/// <summary>How a device names itself to its master.</summary>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) B.1, two and three
/// octets.</remarks>
public sealed record DeviceIdentity(int Vendor, int Device);
