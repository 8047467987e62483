using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Cables;

/// <summary>Which ferrule a flexible core gets.</summary>
/// <remarks>Source: sizes and usual sleeve lengths of DIN 46228-4 (from memory); the terminal's maker
/// decides.</remarks>
internal static class Ferrules
{
    private const int CollarMm = 2;

    private static readonly ImmutableArray<(Rational AreaMm2, int SleeveMm)> Sizes =
    [
        (Rational.Of(0.14m), 6),
        (Rational.Of(0.25m), 6),
        (Rational.Of(0.34m), 6),
        (Rational.Of(0.5m), 8),
        (Rational.Of(0.75m), 8),
        (1, 8),
        (Rational.Of(1.5m), 8),
        (Rational.Of(2.5m), 8),
        (4, 10),
        (6, 12),
        (10, 12),
        (16, 12),
    ];

    /// <summary>How far the insulation is taken off: the sleeve and 2 mm for its collar. Source: common practice, no
    /// source; the maker of the ferrule decides.</summary>
    public static string StripFor(Quantity? conductor) =>
        Find(conductor) is { SleeveMm: > 0 } size ? FormattableString.Invariant($"{size.SleeveMm + CollarMm} mm") : "";

    /// <summary>Such as <c>0.34 x 6 mm</c>; empty for an area that is no standard size.</summary>
    public static string For(Quantity? conductor) =>
        Find(conductor) is { SleeveMm: > 0 } size
            ? FormattableString.Invariant($"{size.AreaMm2.ToString(2)} × {size.SleeveMm} mm")
            : "";

    private static (Rational AreaMm2, int SleeveMm) Find(Quantity? conductor) =>
        Sizes.FirstOrDefault(size => size.AreaMm2 == conductor?.InBase);
}
