using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Logic;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>What is newly wrong with the definitions, and what no longer is. Findings and broken orders are told
/// elsewhere.</summary>
internal static class DefinitionChanges
{
    private static readonly ImmutableHashSet<string> ToldElsewhere =
    [
        .. FindingDiagnostics.All.Select(rule => rule.Code),
        .. LogicDiagnostics.OfOneOrder.Select(rule => rule.Code),
    ];

    public static IEnumerable<Change> Of(ReviewSide before, ReviewSide after) =>
        Of(NewIn(after, before), DefinitionKinds.FaultAdded, isBefore: false)
            .Concat(Of(NewIn(before, after), DefinitionKinds.FaultGone, isBefore: true));

    /// <summary>What is said of several machines in the same words counts once.</summary>
    private static IEnumerable<Change> Of(IEnumerable<Diagnostic> faults, ChangeKind kind, bool isBefore) =>
        faults
            .Where(fault => !ToldElsewhere.Contains(fault.Rule.Code))
            .GroupBy(fault => (Key(fault), fault.Span))
            .Select(alike => Tell(kind, alike.First(), isBefore));

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
