namespace Configurator.Benchmarks.Examples;

/// <summary>What a number of an example measures, in the unit that the formulas take.</summary>
internal enum Kind
{
    /// <summary>Numbers, counts, shares of one.</summary>
    Plain,
    Metres,
    SquareMetres,
    SquareMillimetres,
    Ohm,
    OhmPerKm,
    Amperes,
    Volts,
    Watts,
    Celsius,
    Milliseconds,
    MetresPerSecond,
    Bar,
    LitresPerSecond,
    Litres,
    Hertz,
    PerMinute,
    Percent,
    MilliampereSeconds,
    Newtons,
}
