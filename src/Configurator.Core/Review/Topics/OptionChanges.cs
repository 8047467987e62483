using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Options that are offered on a machine on one side only.</summary>
internal static class OptionChanges
{
    public static IEnumerable<Change> Of(ReviewContext context, MachinePair pair)
    {
        var was = pair.Before.Options.Keys.Select(context.Renames.Of).ToHashSet();
        var now = pair.After.Options.Keys.ToHashSet();
        return pair
            .Before.Options.Values.Where(option => !now.Contains(context.Renames.Of(option.Id.Value)))
            .Where(_ => pair.IsWhole)
            .Select(option =>
                Of(OrderKinds.OptionRemoved, pair, option, isBefore: true) with
                {
                    PagesBefore = [PagePaths.Of(option.Id.Value)],
                }
            )
            .Concat(
                pair.After.Options.Values.Where(option => !was.Contains(option.Id.Value))
                    .Select(option =>
                        Of(OrderKinds.OptionAdded, pair, option, isBefore: false) with
                        {
                            PagesAfter = [PagePaths.Of(option.Id.Value)],
                        }
                    )
            );
    }

    private static Change Of(ChangeKind kind, MachinePair pair, Option option, bool isBefore)
    {
        var offered = option.OfferedOn.FirstOrDefault(machine =>
            machine.Value == (isBefore ? pair.Before : pair.After).Id.Value
        );
        return new(
            kind,
            $"`{option.Id.Value}`",
            [new(offered.Span, isBefore), .. ImmutableArray.Create(new ReviewPlace(option.Id.Span, isBefore))]
        )
        {
            Machine = pair.Id,
            Remark = option.Title.In(Text.BaseLanguage),
        };
    }
}
