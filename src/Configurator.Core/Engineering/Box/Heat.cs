using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Box;

/// <summary>What a wall lets through.</summary>
/// <param name="WattsPerSquareMetreKelvin">The safer value where guides disagree.</param>
public sealed record WallMaterial(string Name, Rational WattsPerSquareMetreKelvin, string Source, Basis Basis);

/// <summary>Heat of a closed cabinet in still air, losses spread evenly. Watts, K, m2 and k in W/(m2 K).</summary>
public static class Heat
{
    private static readonly Rational FanAtSeaLevel = Rational.Of(3.1m);

    public static ImmutableArray<WallMaterial> Walls { get; } =
    [
        new("steel, painted", Rational.Of(5.5m), "public engineering manual, two cooling guides", Basis.Corroborated),
        new("stainless steel, bare", Rational.Of(3.7m), "public cooling guides", Basis.Corroborated),
        new("aluminium, one wall", Rational.Of(6.5m), "public cooling guides: 6.5 to 12", Basis.CommonPractice),
        new("plastic", Rational.Of(3.5m), "public cooling guide", Basis.Corroborated),
        new("aluminium, two walls", Rational.Of(4.5m), "practice", Basis.FromMemory),
    ];

    /// <summary>Inside over outside: dT = P / (k A), ENC-01. Source: VDE 0660-500, by a public manual;
    /// corroborated.</summary>
    public static Rational Rise(Rational watts, Rational k, Rational area) => watts / (k * area);

    /// <summary>Square metres that keep the rise: A = P / (k dT). Source: public cooling guide; corroborated.</summary>
    public static Rational AreaFor(Rational watts, Rational k, Rational rise) => watts / (k * rise);

    /// <summary>What cooling must take away: Q = P - k A dT; negative where none is needed. Source: public cooling
    /// guide; corroborated.</summary>
    public static Rational CoolingWatts(Rational watts, Rational k, Rational area, Rational rise) =>
        watts - (k * area * rise);

    /// <summary>What a heater must add to keep the inside warmer by so much: P = k A dT - losses. Source: physics;
    /// corroborated.</summary>
    public static Rational HeaterWatts(Rational watts, Rational k, Rational area, Rational rise) =>
        -CoolingWatts(watts, k, area, rise);

    /// <summary>Air through a filter fan, in m3/h: V = 3.1 (P - k A dT) / dT at sea level, ENC-02. Source: practice;
    /// from memory.</summary>
    public static Rational FanFlow(Rational watts, Rational k, Rational area, Rational rise) =>
        FanFlow(watts, k, area, rise, FanAtSeaLevel);

    /// <param name="factor">3.1 at sea level, 3.2 at 500 m, 3.3 at 750 m, 3.5 at 1000 m.</param>
    public static Rational FanFlow(Rational watts, Rational k, Rational area, Rational rise, Rational factor) =>
        factor * CoolingWatts(watts, k, area, rise) / rise;

    /// <summary>What a supply gives off itself: P (1 / eta - 1). Source: physics; corroborated.</summary>
    public static Rational SupplyLossWatts(Rational outputWatts, Rational efficiency) =>
        outputWatts * ((1 / efficiency) - 1);
}
