using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Logic;

/// <summary>What sort of rule an order breaks.</summary>
public enum RuleKind
{
    Requires,
    NotWith,
    ComesWith,
    Choice,
    MachineRule,
    Quantity,
    Limit,
    Offer,
}

/// <summary>A rule that a configuration breaks: what it says, where it stands, and the options that it
/// concerns.</summary>
/// <param name="Statement">What is wrong, naming the options; lower case, no full stop.</param>
public sealed record BrokenRule(RuleKind Kind, string Statement, Text? Because, SourceSpan Span)
{
    /// <summary>Options of the order that make the rule bite; empty where something is missing altogether.</summary>
    public ImmutableArray<OptionId> Concerned { get; init; } = [];
}
