using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Logic;

/// <summary>One rule about orders of a machine, and where it stands.</summary>
/// <param name="Statement">In words, options by id in backticks; lower case, no full stop.</param>
public sealed record OrderRule(RuleKind Kind, string Statement, Text? Because, SourceSpan Span)
{
    /// <summary>What must hold; null for a limit on a sum.</summary>
    internal Condition? Meaning { get; init; }

    /// <summary>What adds up, for a limit.</summary>
    internal CountLimit? Limit { get; init; }

    /// <summary>For a choice, which one: it may become one variable with many values.</summary>
    internal Choice? Choice { get; init; }

    /// <summary>Does it hold where each option is taken so many times?</summary>
    internal bool Holds(Func<OptionId, int> quantity) =>
        (Meaning?.Holds(quantity) ?? true)
        && (
            Limit is not { } limit
            || limit.Counts.Sum(share => (long)share.Each * quantity(share.Option.Value)) <= limit.AtMost
        );
}
