using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>How old what the master holds of a device may be: from the M-sequence alone to a cycle more. Source:
/// IOL-07, derived; a public manual shows half to one and a half cycles; corroborated.</summary>
public sealed record InputAge(Rational MillisecondsMin, Rational MillisecondsMax)
{
    /// <summary>The cycle: what of the age nobody can foretell, in ms.</summary>
    public Rational Jitter => MillisecondsMax - MillisecondsMin;

    public static InputAge Of(Rational cycle, Rational mSequence) => new(mSequence, cycle + mSequence);
}
