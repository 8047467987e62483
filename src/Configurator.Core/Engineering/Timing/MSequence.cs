using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>One message of the master and the answer of the device. Source: IO-Link Interface and System Specification
/// v1.1.x (IEC 61131-9) A.2 and A.3.6; corroborated.</summary>
/// <param name="InputOctets">Process data from the device in each message.</param>
/// <param name="OutputOctets">Process data to the device in each message.</param>
/// <param name="OnRequestOctets">Room for parameters in each message: 1, 2, 8 or 32.</param>
public sealed record MSequence(string Type, int InputOctets, int OutputOctets, int OnRequestOctets)
{
    // Gaps in bit times: between the master's octets up to 1, between the device's up to 3, before its answer 1 to 10.
    private const int MasterGapMax = 1;
    private const int DeviceGapMax = 3;
    private const int AnswerMin = 1;
    private const int AnswerMax = 10;

    /// <summary>Reading, the device's answer carries the on-request octets: m = 2 + PDout, n = OD + PDin + 1.</summary>
    public (int Master, int Device) OctetsRead => (2 + OutputOctets, OnRequestOctets + InputOctets + 1);

    /// <summary>Writing, the master's message carries them: m = 2 + PDout + OD, n = PDin + 1.</summary>
    public (int Master, int Device) OctetsWrite => (2 + OutputOctets + OnRequestOctets, InputOctets + 1);

    /// <summary>Bit times of the longest: reading, with every gap at its largest.</summary>
    public int BitsMax => Bits(OctetsRead, AnswerMax, MasterGapMax, DeviceGapMax);

    /// <summary>Bit times of the shortest, with no gap.</summary>
    public int BitsMin => Bits(OctetsRead, AnswerMin, 0, 0);

    /// <summary>The longest it takes, in ms: (m + n) 11 Tb + tA + (m - 1) t1 + (n - 1) t2. Rises with every
    /// octet.</summary>
    public Rational MillisecondsMax(BitRate rate) => rate.Milliseconds(BitsMax);

    /// <summary>The shortest it takes, in ms.</summary>
    public Rational MillisecondsMin(BitRate rate) => rate.Milliseconds(BitsMin);

    private static int Bits((int Master, int Device) octets, int answer, int masterGap, int deviceGap) =>
        ((octets.Master + octets.Device) * BitRates.BitsPerOctet)
        + answer
        + ((octets.Master - 1) * masterGap)
        + ((octets.Device - 1) * deviceGap);
}
