using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Findings that fail now, that hold again, and margins that became smaller or larger, each told once for all
/// configurations that share it.</summary>
internal static class FindingChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        Results(context)
            .SelectMany(result => result.Compare())
            .GroupBy(found => (found.Kind, found.Result.Machine.Id.Value, found.Id, found.Before, found.After))
            .Select(alike => Tell([.. alike]))
            .Concat(Checks(context));

    /// <summary>What is compared: each published configuration, and the worst of all orders.</summary>
    private static IEnumerable<ComparedFindings> Results(ReviewContext context) =>
        context
            .Configurations.Select(pair => new ComparedFindings(
                pair.Before.Machine,
                pair.After.Machine,
                pair,
                Named(context, pair.Before.Report.Findings),
                pair.After.Report.Findings
            ))
            .Concat(context.Machines.SelectMany(pair => AnyOrder(context, pair)));

    private static IEnumerable<ComparedFindings> AnyOrder(ReviewContext context, MachinePair pair)
    {
        if (
            context.Before.Engineered.AllOrders.TryGetValue(pair.Before.Id.Value, out var before)
            && context.After.Engineered.AllOrders.TryGetValue(pair.Id, out var after)
        )
        {
            yield return new(
                pair.Before,
                pair.After,
                null,
                Named(context, [.. before.Findings.Select(worst => worst.Finding)]),
                [.. after.Findings.Select(worst => worst.Finding)]
            );
        }
    }

    /// <summary>By the ids of the later side.</summary>
    private static ImmutableArray<KeyValuePair<string, Finding>> Named(
        ReviewContext context,
        ImmutableArray<Finding> findings
    ) => [.. findings.Select(finding => KeyValuePair.Create(context.Renames.OfFinding(finding.Id), finding))];

    private static Change Tell(ImmutableArray<ChangedFinding> alike)
    {
        var worst = alike.MaxBy(found => found.Tightness)!;
        var machine = worst.Now is null ? worst.Result.Before : worst.Result.Machine;
        var about = (worst.Now ?? worst.Was)!.About;
        var published = alike.Select(found => found.Result.Published).OfType<ConfigurationPair>().ToList();
        return new(
            worst.Kind,
            $"`{worst.Id}`",
            [
                .. worst.Now is { } now ? [ReviewPlace.After(now.Span)] : ImmutableArray<ReviewPlace>.Empty,
                .. PlacesOf.Named(machine, about, isBefore: worst.Now is null),
            ]
        )
        {
            Machine = worst.Result.Machine.Id.Value,
            Before = worst.Before,
            After = worst.After,
            Remark = worst.Remark + (published.Count == 0 ? "; the worst of all orders, published or not" : ""),
            Weight = worst.Tightness,
            Configurations =
            [
                .. published
                    .Select(pair => pair.Id.Value)
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
            PagesBefore = [.. published.Take(1).Select(pair => PagePaths.Of(pair.Before.Published))],
            PagesAfter = [.. published.Take(1).Select(pair => PagePaths.Of(pair.After.Published))],
        };
    }

    /// <summary>How many checks of each rule there are on a machine, where the number changes.</summary>
    private static IEnumerable<Change> Checks(ReviewContext context)
    {
        var counted = context
            .Configurations.SelectMany(pair =>
                pair.Before.Report.Findings.Select(finding => (pair, finding.Rule, Before: 1, After: 0))
                    .Concat(pair.After.Report.Findings.Select(finding => (pair, finding.Rule, Before: 0, After: 1)))
            )
            .GroupBy(found => (found.pair.Machine, found.Rule.Name))
            .OrderBy(group => group.Key.Machine)
            .ThenBy(group => group.Key.Name, StringComparer.Ordinal);
        return from rule in counted
            let before = rule.Sum(found => found.Before)
            let after = rule.Sum(found => found.After)
            where before != after
            select new Change(
                PublishedKinds.ChecksChanged,
                $"`{rule.Key.Name}`",
                [ReviewPlace.After(rule.First().pair.After.Machine.Id.Span)]
            )
            {
                Machine = rule.Key.Machine,
                Before = DocumentContext.Print(before),
                After = DocumentContext.Print(after),
                Remark = rule.First().Rule.Title,
                Configurations =
                [
                    .. rule.GroupBy(found => found.pair.Id.Value, StringComparer.Ordinal)
                        .Where(one => one.Sum(found => found.Before) != one.Sum(found => found.After))
                        .Select(one => one.Key)
                        .Order(StringComparer.Ordinal),
                ],
            };
    }
}
