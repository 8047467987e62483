using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Review.Lines;
using Configurator.Core.Review.Topics;

namespace Configurator.Core.Review;

/// <summary>Compares two states of the definitions, and says what the change means for every order and every
/// wire.</summary>
public static class Reviewer
{
    /// <param name="on">The day of the run, by which accepted deviations end; null where none was given.</param>
    public static ReviewReport Compare(ReviewSide before, ReviewSide after, DateOnly? on)
    {
        var context = new ReviewContext(before, after, on);
        var limits = new List<string>(Faulty(before).Concat(Faulty(after)));
        var site = SiteComparison.Of(before, after, limits);
        IEnumerable<Change> changes =
        [
            .. HomeChanges.Of(context),
            .. RuleChanges.Of(context, limits),
            .. ReleasedChanges.Of(context, site),
            .. PublishedChanges.Of(context),
            .. FindingChanges.Of(context),
            .. RecordChanges.Of(context, limits),
            .. HardwareChanges.Of(context),
            .. CableChanges.Of(context),
            .. DeviceValueChanges.Of(context),
            .. SignalChanges.Of(context),
            .. LoadChanges.Of(context),
            .. DeliveredChanges.Of(context),
            .. RecipeChanges.Of(context),
            .. NoteChanges.Of(context),
            .. DefinitionChanges.Of(before, after),
            .. site?.Changes(before, after) ?? [],
        ];
        return new(
            before.Name,
            after.Name,
            Placed(InOrder(changes).Select(new Scopes(context).In), new(before.Sources, after.Sources)),
            [.. limits.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            DefinitionChanges.Faults(before, after)
        )
        {
            Homes = context.Machines.Sum(pair => pair.After.Plan.Homes.Count),
            Published = context.Configurations.Length,
            Uncompared = site is null ? [ReviewTopic.Site] : [],
        };
    }

    private static IEnumerable<string> Faulty(ReviewSide side)
    {
        if (side.Errors > 0)
        {
            yield return FormattableString.Invariant(
                $"`{side.Name}` has {side.Errors} {(side.Errors == 1 ? "error" : "errors")} ({First(side)}); what depends on {(side.Errors == 1 ? "it" : "them")} is not compared"
            );
        }
    }

    private static string First(ReviewSide side)
    {
        var first = Diagnostic.InOrder(side.Mistakes).First();
        return FormattableString.Invariant(
            $"{(side.Errors == 1 ? "" : "the first: ")}{first.Rule.Code}, `{first.Span.Path}` line {first.Span.Line}: {first.Message}"
        );
    }

    /// <summary>By kind, which follows the topics; what weighs most comes first.</summary>
    private static IEnumerable<Change> InOrder(IEnumerable<Change> changes)
    {
        var rank = ChangeKinds.All.Select((kind, i) => (kind, i)).ToDictionary(pair => pair.kind, pair => pair.i);
        return changes
            .OrderBy(change => rank[change.Kind])
            .ThenByDescending(change => change.Level)
            .ThenByDescending(change => change.Weight)
            .ThenBy(change => change.Machine?.Value, StringComparer.Ordinal)
            .ThenBy(change => change.Subject, StringComparer.Ordinal)
            .ThenBy(change => change.Remark, StringComparer.Ordinal);
    }

    private static ImmutableArray<Change> Placed(IEnumerable<Change> changes, ChangedLines lines) =>
        [.. changes.Select(change => change with { Line = lines.Find(change.Places) })];
}
