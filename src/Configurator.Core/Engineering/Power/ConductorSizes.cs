using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Standard copper conductors, smallest first in each class.</summary>
public static class ConductorSizes
{
    private const string Flexible = "IEC 60228 class 5 maximum at 20 degC";
    private const string Fixed = "IEC 60228 classes 1 and 2 maximum at 20 degC";
    private const string Small = "public cable tables; size outside IEC 60228";

    /// <summary>Flexible cores of cordsets and trunk cables.</summary>
    public static ImmutableArray<ConductorSize> ClassFive { get; } =
    [
        Size(5, 0.14m, 134m, 138m, Small, Basis.CommonPractice),
        Size(5, 0.25m, 76m, 79m, Small, Basis.CommonPractice),
        Size(5, 0.34m, 53m, 56m, Small, Basis.CommonPractice),
        Size(5, 0.5m, 39.0m, 40.1m, Flexible, Basis.Corroborated),
        Size(5, 0.75m, 26.0m, 26.7m, Flexible, Basis.Corroborated),
        Size(5, 1.0m, 19.5m, 20.0m, Flexible, Basis.Corroborated),
        Size(5, 1.5m, 13.3m, 13.7m, Flexible, Basis.Corroborated),
        Size(5, 2.5m, 7.98m, 8.21m, Flexible, Basis.Corroborated),
        Size(5, 4.0m, 4.95m, 5.09m, Flexible, Basis.Corroborated),
        Size(5, 6.0m, 3.3m, 3.39m, Flexible, Basis.Corroborated),
        Size(5, 10.0m, 1.91m, 1.95m, Flexible, Basis.Corroborated),
        Size(5, 16.0m, 1.21m, 1.24m, Flexible, Basis.Corroborated),
        Size(5, 25m, 0.78m, 0.795m, Flexible, Basis.FromMemory),
        Size(5, 35m, 0.554m, 0.565m, Flexible, Basis.FromMemory),
        Size(5, 50m, 0.386m, 0.393m, Flexible, Basis.FromMemory),
    ];

    /// <summary>Solid and stranded conductors for fixed wiring.</summary>
    public static ImmutableArray<ConductorSize> ClassOneAndTwo { get; } =
    [
        Size(1, 0.5m, 36.0m, 36.7m, Fixed, Basis.Corroborated),
        Size(1, 0.75m, 24.5m, 24.8m, Fixed, Basis.Corroborated),
        Size(1, 1.0m, 18.1m, 18.2m, Fixed, Basis.Corroborated),
        Size(1, 1.5m, 12.1m, 12.2m, Fixed, Basis.Corroborated),
        Size(1, 2.5m, 7.41m, 7.56m, Fixed, Basis.Corroborated),
        Size(1, 4.0m, 4.61m, 4.7m, Fixed, Basis.Corroborated),
        Size(1, 6.0m, 3.08m, 3.11m, Fixed, Basis.Corroborated),
        Size(1, 10m, 1.83m, 1.84m, Fixed, Basis.FromMemory),
        Size(1, 16m, 1.15m, 1.16m, Fixed, Basis.FromMemory),
        Size(1, 25m, 0.727m, 0.734m, Fixed, Basis.FromMemory),
    ];

    /// <summary>The row of that area; null where the area is no standard size of the class.</summary>
    public static ConductorSize? Find(Rational areaMm2, int conductorClass = 5) =>
        Of(conductorClass).FirstOrDefault(size => size.AreaMm2 == areaMm2);

    /// <summary>The smallest standard size that is not smaller; null past the largest.</summary>
    public static ConductorSize? AtLeast(Rational areaMm2, int conductorClass = 5) =>
        Of(conductorClass).FirstOrDefault(size => size.AreaMm2 >= areaMm2);

    /// <summary>The next larger standard size; null past the largest.</summary>
    public static ConductorSize? After(Rational areaMm2, int conductorClass = 5) =>
        Of(conductorClass).FirstOrDefault(size => size.AreaMm2 > areaMm2);

    /// <summary>Ohm per km at 20 degC that plain copper of any area stays under: its own row, else that of the next
    /// smaller size, which resists more; below the smallest, in proportion to area.</summary>
    public static Rational OhmPerKm(Rational areaMm2, int conductorClass = 5)
    {
        var sizes = Of(conductorClass);
        return sizes.LastOrDefault(size => size.AreaMm2 <= areaMm2) is { } below
            ? below.PlainOhmPerKm
            : sizes[0].PlainOhmPerKm * sizes[0].AreaMm2 / areaMm2;
    }

    private static ImmutableArray<ConductorSize> Of(int conductorClass) =>
        conductorClass is 1 or 2 ? ClassOneAndTwo : ClassFive;

    private static ConductorSize Size(
        int kind,
        decimal area,
        decimal plain,
        decimal tinned,
        string source,
        Basis basis
    ) => new(Rational.Of(area), kind, Rational.Of(plain), Rational.Of(tinned), source, basis);
}
