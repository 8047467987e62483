using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>One American size.</summary>
/// <param name="SolidOhmPerKm">At 20 degC, from 17.241 ohm mm2/km.</param>
/// <param name="StrandedOhmPer1000Ft">At 75 degC, uncoated; null where the table has none.</param>
/// <param name="ControlAmperes">What a control conductor may carry; 75 degC column from 14 AWG up.</param>
public sealed record AwgSize(
    int Awg,
    Rational AreaMm2,
    Rational SolidOhmPerKm,
    Rational? StrandedOhmPer1000Ft,
    Rational ControlAmperes
);

/// <summary>American conductor sizes, thinnest first.</summary>
public static class AwgSizes
{
    /// <summary>Source: solid by IEC 60028 resistivity; stranded NEC chapter 9 table 8; amperes NFPA 79 table 12.5.1.
    /// All from memory, but for the stranded 16 AWG, which a public training page corroborates.</summary>
    public static ImmutableArray<AwgSize> All { get; } =
    [
        new(24, Rational.Of(0.205m), Rational.Of(84.2m), null, 2),
        new(22, Rational.Of(0.326m), Rational.Of(53.0m), null, 3),
        new(20, Rational.Of(0.518m), Rational.Of(33.3m), null, 5),
        new(18, Rational.Of(0.823m), Rational.Of(20.9m), Rational.Of(7.95m), 7),
        new(16, Rational.Of(1.31m), Rational.Of(13.2m), Rational.Of(4.99m), 10),
        new(14, Rational.Of(2.08m), Rational.Of(8.29m), Rational.Of(3.14m), 20),
        new(12, Rational.Of(3.31m), Rational.Of(5.21m), Rational.Of(1.98m), 25),
        new(10, Rational.Of(5.26m), Rational.Of(3.28m), Rational.Of(1.24m), 35),
    ];

    public static AwgSize? Find(int awg) => All.FirstOrDefault(size => size.Awg == awg);

    /// <summary>The thinnest with that area or more; null past the thickest.</summary>
    public static AwgSize? AtLeast(Rational areaMm2) => All.FirstOrDefault(size => size.AreaMm2 >= areaMm2);
}
