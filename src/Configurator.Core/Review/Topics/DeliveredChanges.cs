using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Delivered machines: cables that the plan now has elsewhere, orders that can no longer be ordered, records
/// that were edited.</summary>
internal static class DeliveredChanges
{
    public static IEnumerable<Change> Of(ReviewContext context)
    {
        var before = context.Before.Catalogue.AsBuilts.ToDictionary(asBuilt => asBuilt.Id.Value);
        var after = context.After.Catalogue.AsBuilts.ToDictionary(asBuilt => asBuilt.Id.Value);
        return before
            .Keys.Union(after.Keys)
            .Order()
            .SelectMany(id => Of(context, before.GetValueOrDefault(id), after.GetValueOrDefault(id)));
    }

    private static IEnumerable<Change> Of(ReviewContext context, AsBuilt? was, AsBuilt? now) =>
        (was, now) switch
        {
            (null, { } added) =>
            [
                Record(added, "added", ReviewPlace.After(added.Id.Span)) with
                {
                    Level = Diagnostics.Severity.Note,
                },
            ],
            ({ } gone, null) => [Record(gone, "removed", ReviewPlace.Before(gone.Id.Span))],
            ({ } old, { } kept) => Edited(context, old, kept).Concat(Contradicted(context, kept)),
            _ => [],
        };

    private static Change Record(AsBuilt asBuilt, string remark, ReviewPlace place) =>
        new(SettingKinds.DeliveredEdited, $"`{asBuilt.Id.Value}`", [place])
        {
            Machine = asBuilt.Machine,
            Remark = remark,
        };

    private static IEnumerable<Change> Edited(ReviewContext context, AsBuilt was, AsBuilt now)
    {
        var before = was.Homes.Homes.ToDictionary(home => context.Renames.Of(home.Key), home => home.Value);
        foreach (var key in before.Keys.Union(now.Homes.Homes.Keys).Order())
        {
            var old = before.TryGetValue(key, out var located) ? $"`{located.Value}`" : "";
            var home = now.Homes.Homes.TryGetValue(key, out var written) ? $"`{written.Value}`" : "";
            if (old != home)
            {
                yield return new(
                    SettingKinds.DeliveredEdited,
                    $"`{now.Id.Value}`: `{key}`",
                    [home.Length > 0 ? ReviewPlace.After(written.Span) : ReviewPlace.Before(located.Span)]
                )
                {
                    Machine = now.Machine,
                    Before = old,
                    After = home,
                };
            }
        }
    }

    private static IEnumerable<Change> Contradicted(ReviewContext context, AsBuilt built) =>
        context
            .Machines.Where(pair => pair.Id == built.Machine && pair.IsWhole)
            .SelectMany(pair => Homes(context, pair, built).Concat(Order(context, pair, built)));

    /// <summary>Homes that differ from the record now and did not before.</summary>
    private static IEnumerable<Change> Homes(ReviewContext context, MachinePair pair, AsBuilt built)
    {
        var plan = pair.Before.Plan.Homes.ToDictionary(home => context.Renames.Of(home.Key), home => home.Value.Value);
        foreach (var (key, real) in built.Homes.Homes)
        {
            var planned = pair.After.Plan.HomeOf(key);
            if (planned != real.Value && plan.TryGetValue(key, out var was) && was == real.Value)
            {
                yield return new(
                    SettingKinds.DeliveredContradicted,
                    $"`{built.Id.Value}`: `{key}`",
                    [
                        pair.After.Plan.Homes.TryGetValue(key, out var home)
                            ? ReviewPlace.After(home.Span)
                            : ReviewPlace.Before(pair.Before.Plan.Span),
                        ReviewPlace.After(real.Span),
                    ]
                )
                {
                    Machine = built.Machine,
                    Before = $"is at `{real.Value}`",
                    After = planned is { } at ? $"will be documented at `{at}`" : "has no home any more",
                };
            }
        }
    }

    private static IEnumerable<Change> Order(ReviewContext context, MachinePair pair, AsBuilt built)
    {
        var was = context.Before.Catalogue.AsBuilts.First(asBuilt => asBuilt.Id.Value == built.Id.Value);
        if (!RuleCheck.Broken(pair.Before, Completion.Complete(pair.Before, was.Order)).IsEmpty)
        {
            yield break;
        }

        ImmutableArray<BrokenRule> broken = RuleCheck.Broken(pair.After, Completion.Complete(pair.After, built.Order));
        if (!broken.IsEmpty)
        {
            yield return new(
                SettingKinds.DeliveredContradicted,
                $"`{built.Id.Value}`",
                [.. broken.Select(rule => ReviewPlace.After(rule.Span)), ReviewPlace.After(built.Id.Span)]
            )
            {
                Machine = built.Machine,
                Remark = "what was delivered can no longer be ordered, so that no retrofit can start from it",
                Details = [.. broken.Take(5).Select(rule => rule.Statement)],
            };
        }
    }
}
