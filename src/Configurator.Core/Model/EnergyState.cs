namespace Configurator.Core.Model;

/// <summary>What is done with an energy while washing.</summary>
public enum EnergyState
{
    Locked,

    /// <summary>Left to fall to nothing: vented, cooled, blocked, discharged.</summary>
    LetDown,
    KeptOn,
}
