namespace Configurator.Core.Model;

/// <summary>Energies and supplies that a machine can have, in the order in which they are made safe.</summary>
public enum Energy
{
    /// <summary>Raised parts: blocked before anything that holds them is let out or switched off.</summary>
    Gravity,
    Electricity,

    /// <summary>A coder's own supply, which the main disconnector leaves alive.</summary>
    CoderMains,

    /// <summary>A laser's own supply.</summary>
    Laser,
    WorkingAir,
    PurgeAir,
    Nitrogen,
    Peroxide,
    Water,
    CleaningCircuit,
    ProductPressure,
    Heat,
    Ultraviolet,
}
