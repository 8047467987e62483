using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Published configurations that came, went, became possible or impossible, and steps of document
/// control.</summary>
internal static class PublishedChanges
{
    public static IEnumerable<Change> Of(ReviewContext context)
    {
        var before = context.Before.Catalogue.Configurations.ToDictionary(published => published.Id.Value);
        var after = context.After.Catalogue.Configurations.ToDictionary(published => published.Id.Value);
        foreach (var id in before.Keys.Union(after.Keys).Order())
        {
            var change = (before.GetValueOrDefault(id), after.GetValueOrDefault(id)) switch
            {
                ({ } gone, null) => Gone(context, gone),
                (null, { } added) => Added(context, added),
                ({ } was, { } now) => Both(context, was, now),
                _ => null,
            };
            if (change is not null)
            {
                yield return change;
            }

            if (OrderChanges.Of(context, before.GetValueOrDefault(id), after.GetValueOrDefault(id)) is { } order)
            {
                yield return order;
            }
        }
    }

    private static Change Gone(ReviewContext context, PublishedConfiguration gone)
    {
        var faults = FaultsIn(context.After, gone.Id.Span.Path);
        return faults.IsEmpty
            ? new(PublishedKinds.ConfigurationRemoved, Name(gone), [ReviewPlace.Before(gone.Id.Span)])
            {
                Machine = context.Renames.Of(gone.Machine),
                Remark = gone.Released is null ? "a draft" : $"released, revision {gone.Revision}",
                PagesBefore = [PagePaths.Of(gone)],
            }
            : new(PublishedKinds.ConfigurationInvalid, Name(gone), [ReviewPlace.After(faults[0].Span)])
            {
                Machine = context.Renames.Of(gone.Machine),
                Remark = "its file can no longer be read",
                Details = Explained(faults),
                PagesBefore = [PagePaths.Of(gone)],
            };
    }

    private static Change Added(ReviewContext context, PublishedConfiguration added)
    {
        var isSound = IsProved(context.After, added);
        return new(
            isSound ? PublishedKinds.ConfigurationAdded : PublishedKinds.ConfigurationInvalid,
            Name(added),
            [ReviewPlace.After(added.Id.Span)]
        )
        {
            Machine = added.Machine,
            Remark = (isSound ? "" : "new, and impossible; ") + (added.Released is null ? "a draft" : "released"),
            Details = isSound ? [] : Explained(FaultsIn(context.After, added.Id.Span.Path)),
            PagesAfter = isSound ? [PagePaths.Of(added)] : [],
        };
    }

    private static Change? Both(ReviewContext context, PublishedConfiguration was, PublishedConfiguration now) =>
        (IsProved(context.Before, was), IsProved(context.After, now)) switch
        {
            (true, false) => Invalid(context, was, now),
            (false, true) => new(PublishedKinds.ConfigurationValid, Name(now), [ReviewPlace.After(now.Id.Span)])
            {
                Machine = now.Machine,
                PagesAfter = [PagePaths.Of(now)],
            },
            (true, true) => Step(was, now),
            _ => null,
        };

    private static Change Invalid(ReviewContext context, PublishedConfiguration was, PublishedConfiguration now)
    {
        var faults = FaultsIn(context.After, now.Id.Span.Path);
        return new(
            PublishedKinds.ConfigurationInvalid,
            Name(now),
            [
                .. faults.SelectMany(fault => fault.Notes).Select(note => ReviewPlace.After(note.Span)),
                .. faults.Select(fault => ReviewPlace.After(fault.Span)),
                ReviewPlace.After(now.Id.Span),
            ]
        )
        {
            Machine = now.Machine,
            Remark =
                (was.Released is null ? "a draft" : $"released, revision {was.Revision}")
                + (faults.IsEmpty ? "; its machine cannot be proved any more" : ""),
            Details = Explained(faults),
            Weight = was.Released is null ? 0 : 1,
            PagesBefore = [PagePaths.Of(was)],
        };
    }

    private static ImmutableArray<string> Explained(ImmutableArray<Diagnostic> faults) =>
        [
            .. faults
                .Take(5)
                .Select(fault =>
                    fault.Message
                    + string.Concat(
                        fault.Notes.Select(note =>
                            FormattableString.Invariant($"; `{note.Span.Path}` line {note.Span.Line}: {note.Message}")
                        )
                    )
                    + (fault.Fix is { } fix ? $"; to fix: {fix.Message}" : "")
                ),
        ];

    private static ImmutableArray<Diagnostic> FaultsIn(ReviewSide side, string path) =>
        [
            .. Diagnostic.InOrder(
                side.Checked.Diagnostics.Where(diagnostic =>
                    diagnostic.Rule.Severity == Severity.Error && diagnostic.Span.Path == path
                )
            ),
        ];

    private static bool IsProved(ReviewSide side, PublishedConfiguration published) =>
        side.Engineered.Proved.Configurations.Any(proved => proved.Published.Id.Value == published.Id.Value);

    private static Change? Step(PublishedConfiguration was, PublishedConfiguration now)
    {
        var (before, after) = (State(was), State(now));
        if (before == after)
        {
            return null;
        }

        var isWithdrawn = was.Released is not null && now.Released is null && was.Revision == now.Revision;
        return new(
            isWithdrawn ? PublishedKinds.ReleaseWithdrawn : PublishedKinds.Revised,
            Name(now),
            [ReviewPlace.After(now.Id.Span)]
        )
        {
            Machine = now.Machine,
            Before = before,
            After = after,
            Remark =
                now.History.LastOrDefault() is { } step && step.Revision == now.Revision
                    ? step.Change.In(Text.BaseLanguage)
                    : "",
            PagesBefore = [PagePaths.Of(was)],
            PagesAfter = [PagePaths.Of(now)],
        };
    }

    private static string State(PublishedConfiguration published) =>
        $"{published.Revision}, {(published.Released is null ? "draft" : "released")}";

    private static string Name(PublishedConfiguration published) => $"`{published.Id.Value}`";
}
