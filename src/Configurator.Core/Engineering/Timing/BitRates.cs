using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>The three transmission rates of IO-Link. Source: IO-Link Interface and System Specification v1.1.x (IEC
/// 61131-9) table 9; corroborated.</summary>
public static class BitRates
{
    /// <summary>A UART frame: start bit, eight data bits, parity, stop bit.</summary>
    public const int BitsPerOctet = 11;

    public static int BitsPerSecond(this BitRate rate) =>
        rate switch
        {
            BitRate.Com1 => 4800,
            BitRate.Com2 => 38_400,
            _ => 230_400,
        };

    /// <summary>The time that so many bits take, in ms.</summary>
    public static Rational Milliseconds(this BitRate rate, Rational bits) => bits * 1000 / rate.BitsPerSecond();
}
