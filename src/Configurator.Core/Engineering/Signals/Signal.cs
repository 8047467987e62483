using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Signals;

/// <summary>One value between a device and the controller.</summary>
/// <param name="Name">Last part of its tag.</param>
/// <param name="Home">Where the device is plugged in, or the box.</param>
public sealed record Signal(FitInstance Instance, string Name, SignalKind Kind, Home Home)
{
    public string Tag => Tags.Of(Instance.Key, Name);

    /// <summary>Counts from 1 the signals of its kind that its device has.</summary>
    public int Nth { get; init; } = 1;

    /// <summary>What it says; null where only its fit's purpose tells.</summary>
    public Text? Title { get; init; }

    /// <summary>Where it stands in the process data of its device or hub; null for a plain signal at a pin.</summary>
    public ProcessItem? Item { get; init; }

    /// <summary>What is exchanged at the port where the process data arrive.</summary>
    public IoLinkData? Data { get; init; }

    /// <summary>The hub that gathers it; null for anything else.</summary>
    public FitInstance? Hub { get; init; }

    /// <summary>The pin of a plain signal at a port of a master; null for anything else.</summary>
    public int? Pin { get; init; }

    /// <summary>So many octets that nobody describes; 0 for a value.</summary>
    public int RawOctets { get; init; }

    /// <summary>The port of a master at which it comes and goes; null where the plan has none, and for the
    /// box.</summary>
    public Home? MasterPort { get; init; }

    public ProcessType Type => Item?.Type ?? ProcessType.BooleanT;

    public int Bits => Item?.Bits ?? 1;

    public bool IsInput => Kind is not (SignalKind.Output or SignalKind.BoxOutput or SignalKind.SafetyOutput);

    /// <summary>Which places of the box it takes one of; null where it comes over a port.</summary>
    public BoxPoint? Point =>
        Kind switch
        {
            SignalKind.FastInput => BoxPoint.FastInput,
            SignalKind.BoxInput => BoxPoint.Input,
            SignalKind.BoxOutput => BoxPoint.Output,
            SignalKind.SafetyInput => BoxPoint.SafetyInput,
            SignalKind.SafetyOutput => BoxPoint.SafetyOutput,
            _ => null,
        };
}

/// <summary>Which way a signal goes, and through what.</summary>
public enum SignalKind
{
    Input,
    Output,
    FastInput,

    /// <summary>A plain input of the box.</summary>
    BoxInput,

    /// <summary>A plain output of the box.</summary>
    BoxOutput,
    SafetyInput,
    SafetyOutput,
}
