namespace Configurator.Core.Model;

/// <summary>Energies and supplies that a machine can have, in the order in which they are made safe.</summary>
public enum Energy
{
    Electricity,
    WorkingAir,
    PurgeAir,
    Nitrogen,
    Peroxide,
    Water,
    CleaningCircuit,
    ProductPressure,
    Heat,
    Gravity,
    Laser,
    Ultraviolet,
    CoderMains,
}
