namespace Configurator.Core.Model;

/// <summary>What the control box has in numbers: each taken by one device at a time.</summary>
public enum BoxPoint
{
    SafetyInput,
    SafetyOutput,
    FastInput,
    Input,
    Output,

    /// <summary>A pair of contacts that drops safe torque off of one drive.</summary>
    TorqueOff,

    /// <summary>A port of the network switch.</summary>
    Network,
}
