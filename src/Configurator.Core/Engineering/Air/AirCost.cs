using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Air;

/// <summary>What compressed air costs.</summary>
public static class AirCost
{
    /// <summary>kW of one horsepower. Source: US DOE tip sheet; corroborated.</summary>
    private static readonly Rational KilowattsPerHorsepower = Rational.Of(0.746m);

    /// <summary>Electricity of a compressor over some hours: bhp 0.746 h price time load / eta, PNE-07. Source: US DOE
    /// tip sheet 1; corroborated.</summary>
    /// <param name="timeShare">Share of the hours in this state, 0 to 1.</param>
    /// <param name="loadShare">Share of full load drawn in it, 0 to 1.</param>
    public static Rational Compressor(
        Rational horsepower,
        Rational hours,
        Rational pricePerKwh,
        Rational timeShare,
        Rational loadShare,
        Rational efficiency
    ) => horsepower * KilowattsPerHorsepower * hours * pricePerKwh * timeShare * loadShare / efficiency;

    /// <summary>Electricity lost through holes alike. Source: US DOE tip sheet 3; from memory, the arithmetic
    /// agrees.</summary>
    /// <param name="scfmEach">Through a well-rounded hole.</param>
    /// <param name="coefficient">0.61 for sharp edges.</param>
    public static Rational Leaks(
        Rational count,
        Rational scfmEach,
        Rational coefficient,
        Rational kilowattsPerCfm,
        Rational hours,
        Rational pricePerKwh
    ) => count * scfmEach * coefficient * kilowattsPerCfm * hours * pricePerKwh;
}
