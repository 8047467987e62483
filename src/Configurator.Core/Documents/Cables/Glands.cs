using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Cables;

/// <summary>Which metric gland holds a cable.</summary>
/// <remarks>Source: usual clamping ranges of glands with threads after IEC 60423 (from memory); the gland's maker
/// decides.</remarks>
internal static class Glands
{
    private static readonly ImmutableArray<(string Thread, Rational MillimetresMax)> Sizes =
    [
        ("M12", Rational.Of(6.5m)),
        ("M16", 10),
        ("M20", 13),
        ("M25", 18),
        ("M32", 25),
        ("M40", 32),
    ];

    /// <summary>The smallest that holds it; empty where the diameter is not stated or too large.</summary>
    public static string For(Quantity? diameter) =>
        diameter is null ? "" : Sizes.FirstOrDefault(size => diameter.InBase <= size.MillimetresMax).Thread ?? "";
}
