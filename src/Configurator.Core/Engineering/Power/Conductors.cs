using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Copper conductors of a two-wire direct-current line. Lengths are one way; the current flows out and
/// back.</summary>
public static class Conductors
{
    /// <summary>Of copper at 20 degC, in ohm mm2/km (100 % IACS). Source: IEC 60028; corroborated.</summary>
    public static readonly Rational ResistivityAt20 = Rational.Of(17.241m);

    /// <summary>Of copper at 20 degC, in 1/K. Source: IEC 60028; corroborated.</summary>
    public static readonly Rational CoefficientAt20 = Rational.Of(0.00393m);

    /// <summary>Of copper at 75 degC, in 1/K. Source: NEC chapter 9 table 8 note; from memory.</summary>
    public static readonly Rational CoefficientAt75 = Rational.Of(0.00323m);

    /// <summary>Resistance at a conductor temperature, in the unit given: R(T) = R20 (1 + 0.00393 (T - 20)), CON-01.
    /// Rises in a straight line. Source: IEC 60028, for -40 to 120 degC; corroborated.</summary>
    public static Rational AtTemperature(Rational ohmAt20, Rational celsius) =>
        ohmAt20 * (1 + (CoefficientAt20 * (celsius - 20)));

    /// <summary>The same from a value tabulated at 75 degC: R(T) = R75 (1 + 0.00323 (T - 75)). Source: NEC chapter 9
    /// table 8 note; from memory.</summary>
    public static Rational FromSeventyFive(Rational ohmAt75, Rational celsius) =>
        ohmAt75 * (1 + (CoefficientAt75 * (celsius - 75)));

    /// <summary>Factor that brings a resistance measured at a temperature to 20 degC: k = 1 / (1 + 0.004 (T - 20)).
    /// Falls as a hyperbola. Source: IEC 60228 annex, by a public cable-maker table; corroborated.</summary>
    public static Rational CorrectionToTwenty(Rational celsius) => 1 / (1 + (Rational.Of(0.004m) * (celsius - 20)));

    /// <summary>Ohm out and back: R = 2 L r / 1000.</summary>
    public static Rational LoopOhm(Rational lengthMetres, Rational ohmPerKm) =>
        LoopOhm(lengthMetres, ohmPerKm, ohmPerKm);

    /// <summary>Ohm out by one conductor and back by another.</summary>
    public static Rational LoopOhm(Rational lengthMetres, Rational ohmPerKmOut, Rational ohmPerKmBack) =>
        lengthMetres * (ohmPerKmOut + ohmPerKmBack) / 1000;

    /// <summary>Volts lost on the line: dU = 2 L r I / 1000, CON-02. Rises in a straight line with each. Source:
    /// physics; public worked examples; corroborated.</summary>
    public static Rational DropVolts(Rational lengthMetres, Rational ohmPerKm, Rational amperes) =>
        LoopOhm(lengthMetres, ohmPerKm) * amperes;

    /// <summary>Longest line, in metres, that loses no more: L = 1000 dU / (2 r I), CON-05. Source: physics;
    /// corroborated.</summary>
    /// <exception cref="DivideByZeroException">Nothing flows or nothing resists.</exception>
    public static Rational LengthMetresMax(Rational dropVoltsMax, Rational ohmPerKm, Rational amperes) =>
        dropVoltsMax * 1000 / (2 * ohmPerKm * amperes);

    /// <summary>Smallest copper area, in mm2, that loses no more: A = 2 L I 17.241 (1 + 0.00393 (T - 20)) / (1000 dU),
    /// CON-06; the next standard size holds it. Source: physics; corroborated.</summary>
    /// <exception cref="DivideByZeroException">No drop is allowed.</exception>
    public static Rational AreaMin(Rational lengthMetres, Rational amperes, Rational dropVoltsMax, Rational celsius) =>
        2 * lengthMetres * amperes * AtTemperature(ResistivityAt20, celsius) / (dropVoltsMax * 1000);

    /// <summary>Ohm per km of a solid copper conductor, from its area alone, at 20 degC. Source: IEC 60028 resistivity;
    /// corroborated.</summary>
    public static Rational OhmPerKmOf(Rational areaMm2) => ResistivityAt20 / areaMm2;

    /// <summary>Amperes of a short circuit at the end of a line: I = U / (Rs + 2 L r / 1000), CON-07; it must exceed
    /// what trips the protective device. Falls as a hyperbola with length. Source: physics; corroborated.</summary>
    /// <param name="sourceOhm">Of supply and all before the line.</param>
    public static Rational ShortCircuitAmperes(
        Rational volts,
        Rational sourceOhm,
        Rational lengthMetres,
        Rational ohmPerKm
    ) => volts / (sourceOhm + LoopOhm(lengthMetres, ohmPerKm));

    /// <summary>Amperes a conductor may carry where it lies: I_Z = I_table f_temperature f_group, CON-08. Source: IEC
    /// 60204-1 annex D; corroborated.</summary>
    public static Rational AmpacityInService(Rational tableAmperes, Rational temperatureFactor, Rational groupFactor) =>
        tableAmperes * temperatureFactor * groupFactor;
}
