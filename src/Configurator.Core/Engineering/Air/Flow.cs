namespace Configurator.Core.Engineering.Air;

/// <summary>Air through valves, tubes and holes. Pressures absolute in bar, flow as free air at the ISO 8778 reference
/// (20 degC, 100 kPa; from memory).</summary>
public static class Flow
{
    private const double ReferenceKelvin = 293.15;

    /// <summary>J/(kg K), of dry air.</summary>
    private const double GasConstant = 287.05;

    /// <summary>sqrt(1.4) (2 / 2.4)^3, gas dynamics; corroborated.</summary>
    private const double ChokedFactor = 0.6847;

    /// <summary>Flow in dm3/s: Q = C p1 sqrt(T0 / T1) where p2 / p1 is at most b, PNE-01, and beyond it that times
    /// sqrt(1 - ((p2 / p1 - b) / (1 - b))^2), PNE-02. Falls from there to nothing at equal pressures. Source: ISO 6358;
    /// two public modelling references; corroborated.</summary>
    /// <param name="conductance">C, in dm3/(s bar).</param>
    public static double Iso6358(double conductance, double b, double upstream, double downstream, double kelvin)
    {
        var choked = conductance * upstream * Math.Sqrt(ReferenceKelvin / kelvin);
        var ratio = downstream / upstream;
        return ratio <= b ? choked
            : ratio >= 1 ? 0
            : choked * Math.Sqrt(1 - Math.Pow((ratio - b) / (1 - b), 2));
    }

    /// <summary>Seconds to charge a tank while the flow is choked and the air stays as warm: t = V dp / (C p1), PNE-05
    /// with p0 of 1 bar. Source: derived; common practice.</summary>
    /// <param name="volume">In dm3.</param>
    public static double ChargeSeconds(double volume, double rise, double conductance, double upstream) =>
        volume * rise / (conductance * upstream);

    /// <summary>C, in dm3/(s bar), of an ideal hole of so many mm2: C = 0.6847 S sqrt(R T0) / p0, PNE-06. Source:
    /// derived; corroborated.</summary>
    public static double ConductanceOf(double areaMm2) =>
        ChokedFactor * areaMm2 * Math.Sqrt(GasConstant * ReferenceKelvin) * 1e-3;

    /// <summary>Free air in m3/s from a round hole into the open, choked. Source: gas dynamics; within half a percent
    /// of a public leak table attributed to US DOE; corroborated.</summary>
    /// <param name="diameter">In m.</param>
    /// <param name="coefficient">1 for a well-rounded hole, 0.61 for a sharp edge.</param>
    /// <param name="pascals">Absolute, before the hole.</param>
    /// <param name="standardPascals">At which the free air is counted, at 68 degF.</param>
    public static double Leak(
        double diameter,
        double coefficient,
        double pascals,
        double kelvin,
        double standardPascals
    )
    {
        var area = Math.PI / 4 * diameter * diameter;
        var kilograms = coefficient * area * pascals * ChokedFactor / Math.Sqrt(GasConstant * kelvin);
        return kilograms * GasConstant * ReferenceKelvin / standardPascals;
    }
}
