using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Diagnostics;

/// <summary>What is wrong with the text: code, place, reason and fix.</summary>
/// <param name="Message">Lower case, no full stop, names in backticks, numbers with units.</param>
public sealed record Diagnostic(Rule Rule, string Message, SourceSpan Span)
{
    /// <summary>Other places that made this one wrong, in reading order.</summary>
    public ImmutableArray<Note> Notes { get; init; } = [];

    public Fix? Fix { get; init; }

    /// <summary>By place, then code, then message: the order in which every writer prints.</summary>
    public static IOrderedEnumerable<Diagnostic> InOrder(IEnumerable<Diagnostic> diagnostics) =>
        diagnostics
            .OrderBy(diagnostic => diagnostic.Span)
            .ThenBy(diagnostic => diagnostic.Rule.Code, StringComparer.Ordinal)
            .ThenBy(diagnostic => diagnostic.Message, StringComparer.Ordinal);
}

/// <summary>A place that has to do with a diagnostic, and why.</summary>
public sealed record Note(string Message, SourceSpan Span);

/// <summary>What would put it right; with a replacement, the exact text for the span.</summary>
public sealed record Fix(string Message, SourceSpan Span = default, string? Replacement = null);
