namespace Configurator.Core.Engineering.Timing;

/// <summary>Reading and writing a parameter beside the process data, a few octets in each cycle.</summary>
public static class Isdu
{
    private const int LengthMax = 238;
    private const int ShortLengthMax = 15;

    /// <summary>Cycles of an exchange: N = ceil(request / OD) + waiting + ceil(response / OD), IOL-08; a planning
    /// estimate, for how long the device is busy is unknown. Source: derived; common practice.</summary>
    public static int Cycles(int requestOctets, int responseOctets, int onRequestOctets, int waitingCycles = 0) =>
        Messages(requestOctets, onRequestOctets) + waitingCycles + Messages(responseOctets, onRequestOctets);

    /// <summary>Octets of a request: service, longer length where more than 15 in all, index of one or two, subindex
    /// where given, data, check; IOL-09. Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) A.5.2;
    /// from memory.</summary>
    /// <returns>Null where it is longer than the 238 octets allowed.</returns>
    public static int? Length(int indexOctets, bool hasSubindex, int dataOctets)
    {
        var total = 1 + indexOctets + (hasSubindex ? 1 : 0) + dataOctets + 1;
        var whole = total > ShortLengthMax ? total + 1 : total;
        return whole <= LengthMax ? whole : null;
    }

    private static int Messages(int octets, int each) => (octets + each - 1) / each;
}
