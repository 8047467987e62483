namespace Configurator.Core.Model;

/// <summary>What can hurt someone; each has its caution.</summary>
public enum Hazard
{
    HotSurface,
    HotWater,
    CrushingHead,
    StoredAir,
    Nitrogen,
    Laser,
    Ultraviolet,
    Peroxide,
    CleaningCircuit,
    Blades,
    BrokenGlass,
}
