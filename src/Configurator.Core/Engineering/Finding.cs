using System.Collections.Immutable;
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

    /// <summary>The data that would show it are not stated: it is neither passed nor failed.</summary>
    Unstated,

    /// <summary>A near test of another standard, or a use beyond what the source covers: a person compares.</summary>
    Review,
}

/// <summary>A check: its name for ever, the diagnostic its failure yields, and where its rule comes from.</summary>
/// <param name="Name">First part of its findings' ids, such as <c>ports.reach</c>.</param>
/// <param name="Source">Standard, handbook or practice.</param>
/// <param name="IsSafety">A failure can never be accepted.</param>
public sealed record FindingRule(string Name, string Title, Rule Diagnostic, string Source, bool IsSafety = false)
{
    /// <summary>What is reported where the data are not stated; null where that cannot be.</summary>
    public Rule? WhenUnstated { get; init; }

    /// <summary>What is reported where a person has to compare; null where that cannot be.</summary>
    public Rule? WhenReview { get; init; }

    public IEnumerable<Rule> Diagnostics => new[] { Diagnostic, WhenUnstated, WhenReview }.OfType<Rule>();
}

/// <summary>One result of a check. Passes are kept too.</summary>
/// <param name="About">The instance, port or master checked: the rest of the id.</param>
/// <param name="Statement">What was found, in words: lower case, no full stop, names in backticks.</param>
/// <param name="Span">What to change if it failed.</param>
public sealed record Finding(FindingRule Rule, string About, string Statement, Verdict Verdict, SourceSpan Span)
{
    public string Id => $"{Rule.Name}/{About}";

    /// <summary>Neither passed nor accepted.</summary>
    public bool IsOpen => Verdict is Verdict.Fail or Verdict.Unstated or Verdict.Review;

    /// <summary>Keeps what it is about from being called checked.</summary>
    public bool IsObstacle => IsOpen && Rule.Diagnostic.Severity != Severity.Note;

    /// <summary>What it yields while it is open.</summary>
    public Rule Diagnostic =>
        Verdict switch
        {
            Verdict.Unstated => Rule.WhenUnstated ?? Rule.Diagnostic,
            Verdict.Review => Rule.WhenReview ?? Rule.Diagnostic,
            _ => Rule.Diagnostic,
        };

    /// <summary>Where the value used comes from, if that is not the rule's source alone.</summary>
    public string? Source { get; init; }

    public Measure? Value { get; init; }

    public Measure? Limit { get; init; }

    /// <summary>How far the value is on the good side of the limit; negative where it fails.</summary>
    public Measure? Margin { get; init; }

    public string? Fix { get; init; }

    /// <summary>What it says in other parts, for tables: device, area, requirement, marking.</summary>
    public ImmutableArray<string> Details { get; init; } = [];

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
