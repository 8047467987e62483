using System.Collections.Immutable;

namespace Configurator.Core.Model;

/// <summary>The steps of a wet clean, in the order in which they are done: what needs power, then what needs everything
/// locked.</summary>
/// <remarks>Source: university food-safety text and public sanitation guides (reference table of cleaning
/// sequences); the order before lock-out: common practice, no source.</remarks>
public enum CleaningStep
{
    /// <summary>Product and packaging leave the machine as it runs.</summary>
    RunOut,

    /// <summary>Closed circuits are washed or flushed while pumps and valves still work.</summary>
    Flush,

    /// <summary>What moves goes to where it is washed.</summary>
    Park,

    /// <summary>Heaters and lamps go off, and what is hot starts to cool.</summary>
    HeatOff,

    /// <summary>Gases are shut and vented, and the room is aired while its warning unit still works.</summary>
    GasOff,

    /// <summary>Keys and selectors.</summary>
    Selector,

    /// <summary>Guards that only open under power; the last before lock-out.</summary>
    Access,
    DryCleanAndSecure,
    PreRinse,
    FoamAndScrub,
    Rinse,
    Inspect,
    Sanitize,
    DryAndRelease,
}

/// <summary>The two halves of a wet clean.</summary>
public static class CleaningSteps
{
    /// <summary>Before lock-out, with every guard shut.</summary>
    public static ImmutableArray<CleaningStep> UnderPower { get; } =
    [.. Enum.GetValues<CleaningStep>().Where(step => step < CleaningStep.DryCleanAndSecure)];

    /// <summary>From lock-out on; these are numbered.</summary>
    public static ImmutableArray<CleaningStep> Locked { get; } =
    [.. Enum.GetValues<CleaningStep>().Where(step => step >= CleaningStep.DryCleanAndSecure)];
}
