using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Homes, designations and masters: what decides where wires are on machines that are built.</summary>
internal static class HomeChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        context
            .Machines.SelectMany(pair =>
                OfPlan(context, pair).Concat(PlaceChanges.Of(context, pair)).Concat(MasterPlaces.Of(context, pair))
            )
            .Concat(Designations(context))
            .Concat(Renamings(context));

    private static IEnumerable<Change> OfPlan(ReviewContext context, MachinePair pair)
    {
        var before = pair.Before.Plan.Homes.ToDictionary(home => context.Renames.Of(home.Key), home => home);
        var after = pair.After.Plan.Homes;
        foreach (var key in before.Keys.Union(after.Keys).Order())
        {
            var was = before.TryGetValue(key, out var old) ? old.Value.Value : (Home?)null;
            var now = pair.After.Plan.HomeOf(key);
            if (was == now || (!pair.IsWhole && (was is null || now is null)))
            {
                continue;
            }

            var places = new[]
            {
                after.TryGetValue(key, out var home) ? ReviewPlace.After(home.Span) : default,
                was is null ? default : ReviewPlace.Before(old.Value.Span),
            };
            yield return Concerning(
                context,
                pair,
                key,
                new(KindOf(was, now), $"`{key}`", [.. places.Where(place => place.IsKnown)])
                {
                    Machine = pair.Id,
                    Before = was is null ? "" : $"`{was}`",
                    After = now is null ? "" : $"`{now}`",
                    PagesBefore = was is null ? [] : [PagePaths.PortPlan(pair.Before.Id.Value)],
                    PagesAfter = now is null ? [] : [PagePaths.PortPlan(pair.Id)],
                }
            );
        }
    }

    private static ChangeKind KindOf(Home? was, Home? now) =>
        was is null && now is { IsDirect: true } ? HomeKinds.BoxCableAdded
        : was is null ? HomeKinds.HomeAdded
        : now is null ? HomeKinds.HomeRemoved
        : HomeKinds.HomeMoved;

    /// <summary>Which configurations and delivered machines have the fit, before or after.</summary>
    internal static Change Concerning(ReviewContext context, MachinePair pair, InstanceKey key, Change change)
    {
        ImmutableArray<ConfigurationPair> fitted =
        [
            .. context.Configurations.Where(published =>
                published.Machine == pair.Id
                && (
                    published.After.Report.Fitted.Fitted.Any(instance => instance.Key == key)
                    || published.Before.Report.Fitted.Fitted.Any(instance => context.Renames.Of(instance.Key) == key)
                )
            ),
        ];
        var released = fitted.Count(published => published.Before.Published.Released is not null);
        var delivered = context.DeliveredWith(asBuilt =>
            context.Renames.Of(asBuilt.Machine) == pair.Id
            && asBuilt.Homes.Homes.Keys.Any(own => context.Renames.Of(own) == key)
        );
        return change with
        {
            Configurations = [.. fitted.Select(published => published.Id.Value)],
            Remark = string.Join("; ", Counted(released, delivered)),
            Weight = fitted.Length + (10 * released) + (100 * delivered.Length),
        };
    }

    private static IEnumerable<string> Counted(int released, ImmutableArray<string> delivered)
    {
        if (released > 0)
        {
            yield return FormattableString.Invariant($"{released} of these released");
        }

        if (!delivered.IsEmpty)
        {
            yield return Concerned.OnDelivered(delivered);
        }
    }

    private static IEnumerable<Change> Designations(ReviewContext context)
    {
        var (before, after) = (context.Before.Catalogue.Site.Designations, context.After.Catalogue.Site.Designations);
        return before == after
            ? context.Machines.SelectMany(pair => Designations(context, pair))
            :
            [
                new(HomeKinds.DesignationChanged, "every designation", [])
                {
                    Before = WordLists.Plain(before),
                    After = WordLists.Plain(after),
                },
            ];
    }

    private static IEnumerable<Change> Designations(ReviewContext context, MachinePair pair)
    {
        var before = new Designations(context.Before.Catalogue.Site.Designations);
        var after = new Designations(context.After.Catalogue.Site.Designations);
        var now = pair.After.Instances.ToDictionary(instance => instance.Key);
        return pair
            .Before.Instances.Where(instance => now.ContainsKey(context.Renames.Of(instance.Key)))
            .Select(instance => (Was: instance, Now: now[context.Renames.Of(instance.Key)]))
            .Where(both => before.Of(both.Was) != after.Of(both.Now))
            .Select(both =>
                Concerning(
                    context,
                    pair,
                    both.Now.Key,
                    new(
                        HomeKinds.DesignationChanged,
                        $"`{both.Now.Key}`",
                        PlacesOf.Instance(pair.After, both.Now, isBefore: false)
                    )
                    {
                        Machine = pair.Id,
                        Before = $"`{before.Of(both.Was)}`",
                        After = $"`{after.Of(both.Now)}`",
                    }
                )
            );
    }

    private static IEnumerable<Change> Renamings(ReviewContext context) =>
        context
            .Renames.Machines.Select(name => new Change(
                HomeKinds.Renamed,
                "machine",
                [ReviewPlace.After(context.After.Catalogue.Machines[name.Value].Id.Span)]
            )
            {
                Machine = name.Value,
                Before = $"`{name.Key}`",
                After = $"`{name.Value}`",
            })
            .Concat(
                context.Renames.Options.Select(name => new Change(
                    HomeKinds.Renamed,
                    "option",
                    [ReviewPlace.After(context.After.Catalogue.Options[name.Value].Id.Span)]
                )
                {
                    Before = $"`{name.Key}`",
                    After = $"`{name.Value}`",
                })
            );
}
