namespace Configurator.Core.Model;

/// <summary>Energies and supplies that a machine can have, in the order in which they are made safe.</summary>
public enum Energy
{
    Electricity,

    /// <summary>Raised parts: blocked before the air that holds them is let out.</summary>
    Gravity,
    WorkingAir,
    PurgeAir,
    Nitrogen,
    Peroxide,
    Water,
    CleaningCircuit,
    ProductPressure,
    Heat,
    Laser,
    Ultraviolet,
    CoderMains,
}
