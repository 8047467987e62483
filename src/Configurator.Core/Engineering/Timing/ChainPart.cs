using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Where a signal passes between an event and the controller's answer.</summary>
public enum ChainStage
{
    Device,
    Hub,
    Port,
    Input,
    Master,
    Network,
    Task,
    Output,
}

/// <summary>What one part of the way takes, in ms.</summary>
/// <param name="Longest">At worst.</param>
/// <param name="Jitter">How much of that varies from one event to the next; the rest can be compensated.</param>
public sealed record ChainPart(ChainStage Stage, Rational Longest, Rational Jitter);
