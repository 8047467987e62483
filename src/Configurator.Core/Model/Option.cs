using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>Something a customer can order: what it needs, rules out, brings along and fits.</summary>
/// <param name="Family">The folder it is defined in.</param>
public sealed record Option(Located<OptionId> Id, string Family, Text Title)
{
    public Text Summary { get; init; } = Text.Empty;

    public ImmutableArray<Located<string>> Formerly { get; init; } = [];

    public ImmutableArray<Located<MachineId>> OfferedOn { get; init; } = [];

    public QuantityRange? Quantity { get; init; }

    public ImmutableArray<Requirement> Requires { get; init; } = [];

    public ImmutableArray<OptionLink> NotWith { get; init; } = [];

    public ImmutableArray<OptionLink> ComesWith { get; init; } = [];

    /// <summary>List price without its devices.</summary>
    public Quantity? Price { get; init; }

    /// <summary>From order to delivery, where this option is the slowest.</summary>
    public Quantity? LeadTime { get; init; }

    /// <summary>Null while it is not released for sale.</summary>
    public Release? Released { get; init; }

    /// <summary>Options that stand for the markets it is released for; empty where it is for all.</summary>
    public ImmutableArray<Located<OptionId>> Markets { get; init; } = [];

    /// <summary>Cycles that its station can do, at most; null where it slows nothing down.</summary>
    public Quantity? RateMax { get; init; }

    /// <summary>By how much it raises the rated cycles of the machine.</summary>
    public Quantity? RateRaise { get; init; }

    public ImmutableArray<Fit> Fits { get; init; } = [];

    public ImmutableArray<Located<BoxTouch>> TouchesBox { get; init; } = [];

    public WashCare Care { get; init; } = WashCare.None;

    public NoteSet Notes { get; init; } = NoteSet.Empty;

    /// <summary>False where something of its definition was faulty and left out.</summary>
    public bool IsWhole { get; init; } = true;
}

/// <summary>How often an option may be taken, and what is counted.</summary>
public sealed record QuantityRange(int From, int To, Text Counts);

/// <summary>A condition that must hold where its option is taken, with the sentence a salesperson reads.</summary>
public sealed record Requirement(Condition Condition, Text? Because);

/// <summary>Another option that is ruled out or brought along, with the sentence a salesperson reads.</summary>
public sealed record OptionLink(Located<OptionId> Other, Text? Because);

/// <summary>What an option honestly adds to the control box.</summary>
public enum BoxTouch
{
    Drive,
    HeaterCircuit,
    SafetyInputs,
    SafetyOutputs,
    DirectInput,
    PanelPart,
    Supply,
}
