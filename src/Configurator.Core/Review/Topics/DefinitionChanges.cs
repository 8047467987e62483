using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>What is newly wrong with the definitions, and what no longer is. Findings and broken orders are told
/// elsewhere.</summary>
internal static class DefinitionChanges
{
    private static readonly ImmutableHashSet<string> ToldElsewhere =
    [
        .. FindingDiagnostics.All.Select(rule => rule.Code),
        "CFG3001",
        "CFG3002",
        "CFG3004",
        "CFG3005",
        "CFG3006",
        "CFG3007",
    ];

    public static IEnumerable<Change> Of(ReviewSide before, ReviewSide after) =>
        NewIn(after, before)
            .Where(fault => !ToldElsewhere.Contains(fault.Rule.Code))
            .Select(fault => Tell(DefinitionKinds.FaultAdded, fault, isBefore: false))
            .Concat(
                NewIn(before, after)
                    .Where(fault => !ToldElsewhere.Contains(fault.Rule.Code))
                    .Select(fault => Tell(DefinitionKinds.FaultGone, fault, isBefore: true))
            );

    /// <summary>All that is wrong with the later side, the new marked.</summary>
    public static ImmutableArray<ReviewFault> Faults(ReviewSide before, ReviewSide after)
    {
        var added = NewIn(after, before).ToHashSet(ReferenceEqualityComparer.Instance);
        return
        [
            .. Diagnostic
                .InOrder(after.Checked.Diagnostics)
                .Select(diagnostic => new ReviewFault(diagnostic, added.Contains(diagnostic))),
        ];
    }

    /// <summary>The line does not count: text above it may have come or gone.</summary>
    private static IEnumerable<Diagnostic> NewIn(ReviewSide side, ReviewSide other)
    {
        var known = other.Checked.Diagnostics.GroupBy(Key).ToDictionary(alike => alike.Key, alike => alike.Count());
        return Diagnostic
            .InOrder(side.Checked.Diagnostics)
            .GroupBy(Key)
            .SelectMany(alike => alike.Skip(known.GetValueOrDefault(alike.Key)));
    }

    private static (string Code, string Path, string Message) Key(Diagnostic diagnostic) =>
        (diagnostic.Rule.Code, diagnostic.Span.Path, diagnostic.Message);

    private static Change Tell(ChangeKind kind, Diagnostic fault, bool isBefore) =>
        new(kind, fault.Rule.Code, [new(fault.Span, isBefore)])
        {
            Level = kind == DefinitionKinds.FaultGone ? Severity.Note : fault.Rule.Severity,
            Remark = FormattableString.Invariant($"`{fault.Span.Path}` line {fault.Span.Line}: {fault.Message}"),
            Details = fault.Fix is { } fix && !isBefore ? [$"to fix: {fix.Message}"] : [],
            Weight = (double)fault.Rule.Severity,
        };
}
