using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>How a cable lies, after IEC 60204-1 annex D.</summary>
public enum Installation
{
    /// <summary>Single cores in conduit.</summary>
    B1,

    /// <summary>A cable in conduit or duct.</summary>
    B2,

    /// <summary>On a wall.</summary>
    C,

    /// <summary>On an open tray.</summary>
    E,
}

/// <summary>What a PVC-insulated copper conductor may carry.</summary>
/// <param name="B1">Amperes; from memory, as is <paramref name="C"/>.</param>
/// <param name="B2">Amperes; corroborated, as is <paramref name="E"/>.</param>
public sealed record AmpacityRow(Rational AreaMm2, Rational B1, Rational B2, Rational C, Rational E)
{
    public Rational In(Installation installation) =>
        installation switch
        {
            Installation.B1 => B1,
            Installation.B2 => B2,
            Installation.C => C,
            _ => E,
        };
}

/// <summary>Tables of what conductors may carry, and what heat and company take away.</summary>
public static class Ampacity
{
    /// <summary>Continuous, at 40 degC. Source: IEC 60204-1 table 6; B2 and E by a public machine-controller help page
    /// (corroborated), B1 and C from memory.</summary>
    public static ImmutableArray<AmpacityRow> Rows { get; } =
    [
        Row(0.75m, 8.6m, 8.5m, 9.8m, 10.4m),
        Row(1.0m, 10.3m, 10.1m, 11.7m, 12.4m),
        Row(1.5m, 13.5m, 13.1m, 15.2m, 16.1m),
        Row(2.5m, 18.3m, 17.4m, 21m, 22m),
        Row(4m, 25m, 23m, 28m, 30m),
        Row(6m, 32m, 30m, 36m, 37m),
        Row(10m, 44m, 40m, 50m, 52m),
        Row(16m, 60m, 54m, 66m, 70m),
    ];

    /// <summary>Cores of electronic cables, such as cordsets, as cables on an open tray. Source: IEC 60204-1 table 6,
    /// electronic pairs; from memory.</summary>
    private static readonly ImmutableArray<(Rational AreaMm2, Rational Amperes)> Small =
    [
        (Rational.Of(0.2m), Rational.Of(4.4m)),
        (Rational.Of(0.5m), Rational.Of(7.8m)),
        (Rational.Of(0.75m), 10),
    ];

    private static readonly ImmutableArray<(int Celsius, Rational Factor)> TemperatureFactors =
    [
        (30, Rational.Of(1.15m)),
        (35, Rational.Of(1.08m)),
        (40, 1),
        (45, Rational.Of(0.91m)),
        (50, Rational.Of(0.82m)),
        (55, Rational.Of(0.71m)),
        (60, Rational.Of(0.58m)),
    ];

    private static readonly ImmutableArray<int> GroupSizes = [1, 2, 4, 6, 9];

    /// <summary>The table's amperes; null for an area that it does not hold.</summary>
    public static Rational? Amperes(Rational areaMm2, Installation installation) =>
        Rows.FirstOrDefault(row => row.AreaMm2 == areaMm2)?.In(installation);

    /// <summary>What the core of a cordset may carry: the row of its area, else that of the next smaller one; nothing
    /// below the smallest, for the table says nothing there.</summary>
    public static Rational OfCordset(Rational areaMm2) => Small.LastOrDefault(row => row.AreaMm2 <= areaMm2).Amperes;

    /// <summary>The factor for the next warmer ambient of the table; null above 60 degC. Source: IEC 60204-1 table D.1
    /// for PVC, which is sqrt((70 - T) / 30); from memory.</summary>
    public static Rational? TemperatureFactor(Rational ambientCelsius) =>
        TemperatureFactors.FirstOrDefault(row => row.Celsius >= ambientCelsius) is { Celsius: > 0 } row
            ? row.Factor
            : null;

    /// <summary>The factor for the next larger number of loaded cables side by side; beyond nine, that for nine, so ask
    /// somebody who knows. Source: IEC 60204-1 table D.2; from memory.</summary>
    public static Rational GroupFactor(int loadedCables, Installation installation)
    {
        var column = GroupSizes.TakeWhile(size => size < loadedCables).Count();
        ImmutableArray<decimal> factors = installation switch
        {
            Installation.B1 or Installation.B2 => [1, 0.8m, 0.65m, 0.57m, 0.5m],
            Installation.C => [1, 0.85m, 0.75m, 0.72m, 0.7m],
            _ => [1, 0.88m, 0.77m, 0.73m, 0.72m],
        };
        return Rational.Of(factors[Math.Min(column, factors.Length - 1)]);
    }

    private static AmpacityRow Row(decimal area, decimal b1, decimal b2, decimal c, decimal e) =>
        new(Rational.Of(area), Rational.Of(b1), Rational.Of(b2), Rational.Of(c), Rational.Of(e));
}
