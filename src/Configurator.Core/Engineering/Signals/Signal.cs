using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Signals;

/// <summary>One value between a device and the controller.</summary>
/// <param name="Name">Last part of its tag.</param>
/// <param name="Home">Where the device is plugged in, or the box.</param>
public sealed record Signal(FitInstance Instance, string Name, SignalKind Kind, Home Home)
{
    public string Tag => Tags.Of(Instance.Key, Name);

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

    public bool IsInput => Kind != SignalKind.Output && Kind != SignalKind.SafetyOutput;
}

/// <summary>Which way a signal goes, and through what.</summary>
public enum SignalKind
{
    Input,
    Output,
    FastInput,
    SafetyInput,
    SafetyOutput,
}
