namespace Configurator.Core.Model.Units;

/// <summary>What a quantity measures. Quantities of one dimension can be compared.</summary>
public enum Dimension
{
    Length,
    Current,
    Voltage,
    Power,
    Resistance,
    Time,
    Rate,
    Speed,
    Pressure,

    /// <summary>Free air, as volume at the reference atmosphere of ISO 8778 (20 degC, 100 kPa).</summary>
    FreeAirFlow,
    Temperature,
    Mass,
    CrossSection,
    Share,
    Angle,
    Torque,
    Money,
}
