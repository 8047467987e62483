using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Signals;

/// <summary>Types of signals and parameters, as IO-Link names them and as IEC 61131-3 declares them.</summary>
/// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Annex F; IEC 61131-3 elementary
/// types,
/// from memory.</remarks>
internal static class SignalTypes
{
    /// <summary><c>UIntegerT(14)</c>; octets that nobody describes are <c>OctetStringT(2)</c>.</summary>
    public static string Of(Signal signal) =>
        signal.RawOctets > 0
            ? FormattableString.Invariant($"OctetStringT({signal.RawOctets})")
            : Of(signal.Type, signal.Bits);

    public static string Of(ProcessType type, int bits) =>
        type is ProcessType.UIntegerT or ProcessType.IntegerT
            ? FormattableString.Invariant($"{type}({bits})")
            : type.ToString();

    public static string Of(RawType type) =>
        type switch
        {
            RawType.Bool => "BooleanT",
            RawType.Float32 => "Float32T",
            RawType.Int8 or RawType.Int16 or RawType.Int32 => FormattableString.Invariant(
                $"IntegerT({8 * OctetsOf(type)})"
            ),
            _ => FormattableString.Invariant($"UIntegerT({8 * OctetsOf(type)})"),
        };

    public static int OctetsOf(RawType type) =>
        type switch
        {
            RawType.Bool or RawType.Uint8 or RawType.Int8 => 1,
            RawType.Uint16 or RawType.Int16 => 2,
            _ => 4,
        };

    /// <summary>The smallest elementary type that holds its raw value.</summary>
    public static string Declared(Signal signal) =>
        (signal.RawOctets, signal.Type, signal.Bits) switch
        {
            (> 0, _, _) => FormattableString.Invariant($"ARRAY [0..{signal.RawOctets - 1}] OF BYTE"),
            (_, ProcessType.BooleanT, _) => "BOOL",
            (_, ProcessType.Float32T, _) => "REAL",
            (_, ProcessType.UIntegerT, <= 8) => "USINT",
            (_, ProcessType.UIntegerT, <= 16) => "UINT",
            (_, ProcessType.UIntegerT, <= 32) => "UDINT",
            (_, ProcessType.UIntegerT, _) => "ULINT",
            (_, _, <= 8) => "SINT",
            (_, _, <= 16) => "INT",
            (_, _, <= 32) => "DINT",
            _ => "LINT",
        };
}
