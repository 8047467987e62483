using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Where a load of constant power settles at the end of a line.</summary>
public readonly record struct ConstantPowerPoint(Rational Volts, Rational Amperes);

/// <summary>A load that draws more current the lower its voltage is, such as a switched-mode supply.</summary>
public static class ConstantPowerLoad
{
    /// <summary>Decimals of a volt that are kept.</summary>
    private const int VoltDecimals = 9;

    /// <summary>U = (Us + sqrt(Us^2 - 4 R P)) / 2, CON-04; null where Us^2 &lt; 4 R P: the line cannot carry that much
    /// power at any voltage, and the supply collapses. Source: physics; corroborated.</summary>
    /// <returns>Volts rounded down and amperes up, so that neither flatters.</returns>
    public static ConstantPowerPoint? Settle(Rational sourceVolts, Rational loopOhm, Rational watts)
    {
        var discriminant = (sourceVolts * sourceVolts) - (4 * loopOhm * watts);
        if (discriminant < 0 || sourceVolts <= 0)
        {
            return null;
        }

        var volts = (sourceVolts + discriminant.RootDown(VoltDecimals)) / 2;
        return new(volts, watts / volts);
    }

    /// <summary>The most power, in W, that a line can carry: P = Us^2 / (4 R), at half the source voltage. Source:
    /// physics; corroborated.</summary>
    /// <exception cref="DivideByZeroException">The line has no resistance, so there is no most.</exception>
    public static Rational WattsMax(Rational sourceVolts, Rational loopOhm) =>
        sourceVolts * sourceVolts / (4 * loopOhm);
}
