using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Published orders that tick other options than they did, or that come to something else.</summary>
internal static class OrderChanges
{
    /// <returns>Null where nothing is different, or one side has no such order.</returns>
    public static Change? Of(ReviewContext context, PublishedConfiguration? was, PublishedConfiguration? now)
    {
        if (was is null || now is null)
        {
            return null;
        }

        var pair = context.Configurations.FirstOrDefault(pair => pair.Id == now.Id.Value);
        var ticked = Differing(Named(context, was.Order.Picks), now.Order.Picks);
        var taken = pair is null
            ? ticked
            : Differing(
                Named(context, pair.Before.Proved.Configuration.Quantities),
                pair.After.Proved.Configuration.Quantities
            );
        var isSame = pair is not null && taken is { Gone: "", Come: "" };
        var (gone, come) = isSame ? ticked : taken;
        return gone.Length + come.Length == 0
            ? null
            : new(
                isSame ? PublishedKinds.OrderRewritten : PublishedKinds.OrderEdited,
                $"`{now.Id.Value}`",
                [ReviewPlace.After(now.Id.Span)]
            )
            {
                Machine = now.Machine,
                Before = gone,
                After = come,
                Remark = string.Join("; ", Remarks(now, isSame, ticked is { Gone: "", Come: "" })),
                PagesBefore = [PagePaths.Of(was)],
                PagesAfter = [PagePaths.Of(now)],
            };
    }

    private static IEnumerable<string> Remarks(PublishedConfiguration now, bool isSame, bool isUntouched)
    {
        if (isSame)
        {
            yield return "the same result, since rules bring it along";
        }
        else if (isUntouched)
        {
            yield return "the file is as it was; rules bring it along";
        }

        if (now.Released is not null)
        {
            yield return $"released, revision {now.Revision}";
        }
    }

    private static ImmutableSortedDictionary<OptionId, int> Named(
        ReviewContext context,
        ImmutableSortedDictionary<OptionId, int> picks
    ) => picks.ToImmutableSortedDictionary(pick => context.Renames.Of(pick.Key), pick => pick.Value);

    private static (string Gone, string Come) Differing(
        ImmutableSortedDictionary<OptionId, int> was,
        ImmutableSortedDictionary<OptionId, int> now
    ) => (Only(was, now), Only(now, was));

    private static string Only(
        ImmutableSortedDictionary<OptionId, int> these,
        ImmutableSortedDictionary<OptionId, int> those
    ) => PickWords.Of(these.Where(pick => those.GetValueOrDefault(pick.Key) != pick.Value));
}
