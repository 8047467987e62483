using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>What a safety device needs of the box.</summary>
/// <param name="Inputs">Safety inputs, one a channel.</param>
/// <param name="Outputs">Safety outputs.</param>
public sealed record SafetyNeeds(int Inputs, int Outputs, TestPulses Pulses);

/// <summary>What the box offers safety devices.</summary>
public sealed record SafetyOffer(int Inputs, int Outputs, bool GivesPulses)
{
    /// <summary>The standard fit that has these inputs and outputs; null where the machine does not say.</summary>
    public Located<string>? Controller { get; init; }

    /// <summary>The standard fit that drops safe torque off of every drive; null where the machine does not
    /// say.</summary>
    public Located<string>? TorqueOff { get; init; }

    /// <summary>How many drives it can drop; null where the machine does not say.</summary>
    public int? TorqueOffPairs { get; init; }
}

/// <summary>How shorts in the cable of a safety device are found.</summary>
public enum TestPulses
{
    /// <summary>The device has none to be found, or is no input.</summary>
    None,

    /// <summary>Plain contacts: the box sends pulses through them.</summary>
    Needed,

    /// <summary>The device tests its outputs itself.</summary>
    Own,
}
