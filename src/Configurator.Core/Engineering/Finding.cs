using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering;

/// <summary>What a check came to.</summary>
public enum Verdict
{
    Pass,
    Fail,

    /// <summary>Failed, and a named role accepts it by a committed record.</summary>
    Accepted,
}

/// <summary>A check: its name for ever, the diagnostic its failure yields, and where its rule comes from.</summary>
/// <param name="Name">First part of its findings' ids, such as <c>ports.reach</c>.</param>
/// <param name="Source">Standard, handbook or practice.</param>
/// <param name="IsSafety">A failure can never be accepted.</param>
public sealed record FindingRule(string Name, string Title, Rule Diagnostic, string Source, bool IsSafety = false);

/// <summary>One result of a check. Passes are kept too.</summary>
/// <param name="About">The instance, port or master checked: the rest of the id.</param>
/// <param name="Statement">What was found, in words: lower case, no full stop, names in backticks.</param>
/// <param name="Span">What to change if it failed.</param>
public sealed record Finding(FindingRule Rule, string About, string Statement, Verdict Verdict, SourceSpan Span)
{
    public string Id => $"{Rule.Name}/{About}";

    public Measure? Value { get; init; }

    public Measure? Limit { get; init; }

    /// <summary>How far the value is on the good side of the limit; negative where it fails.</summary>
    public Measure? Margin { get; init; }

    public string? Fix { get; init; }

    public AcceptedDeviation? Accepted { get; init; }

    /// <summary>Passes where the value is no larger than the limit.</summary>
    public static Finding AtMost(
        FindingRule rule,
        string about,
        string statement,
        Measure value,
        Measure limit,
        SourceSpan span
    ) =>
        new(rule, about, statement, value.Value <= limit.Value ? Verdict.Pass : Verdict.Fail, span)
        {
            Value = value,
            Limit = limit,
            Margin = limit - value,
        };

    /// <summary>Passes where the value is no smaller than the limit.</summary>
    public static Finding AtLeast(
        FindingRule rule,
        string about,
        string statement,
        Measure value,
        Measure limit,
        SourceSpan span
    ) =>
        new(rule, about, statement, value.Value >= limit.Value ? Verdict.Pass : Verdict.Fail, span)
        {
            Value = value,
            Limit = limit,
            Margin = value - limit,
        };

    /// <summary>Passes where something is so.</summary>
    public static Finding That(FindingRule rule, string about, string statement, bool isSo, SourceSpan span) =>
        new(rule, about, statement, isSo ? Verdict.Pass : Verdict.Fail, span);
}
