using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Released revisions whose results or documents are no longer what was approved.</summary>
internal static class ReleasedChanges
{
    public static IEnumerable<Change> Of(ReviewContext context, SiteComparison? site) =>
        context.Configurations.Where(IsSameRelease).Select(pair => Of(context, pair, site)).OfType<Change>();

    private static bool IsSameRelease(ConfigurationPair pair) =>
        pair.Before.Published.Released is not null
        && pair.After.Published.Released is not null
        && pair.Before.Published.Revision == pair.After.Published.Revision;

    private static Change? Of(ReviewContext context, ConfigurationPair pair, SiteComparison? site)
    {
        var results = Differing(context, pair).ToList();
        if (results.Count > 0)
        {
            return new(
                PublishedKinds.ReleasedChanged,
                $"`{pair.Id}`",
                [ReviewPlace.After(pair.After.Published.Id.Span)]
            )
            {
                Machine = pair.Machine,
                Remark =
                    $"revision {pair.After.Published.Revision} as before, but other {string.Join(", ", results.Select(result => result.Word))}; give it a new revision, or undo what changed it",
                Details = [.. results.Select(result => result.Say())],
                PagesBefore = [PagePaths.Of(pair.Before.Published)],
                PagesAfter = [PagePaths.Of(pair.After.Published)],
            };
        }

        var reworded = site?.ChangedOf(pair.After.Published) ?? [];
        return reworded.IsEmpty
            ? null
            : new(PublishedKinds.ReleasedReworded, $"`{pair.Id}`", [ReviewPlace.After(pair.After.Published.Id.Span)])
            {
                Machine = pair.Machine,
                Remark =
                    $"revision {pair.After.Published.Revision}: {string.Join(", ", reworded.Select(page => page.Name))}",
                PagesBefore = [.. reworded.Select(page => page.Path)],
                PagesAfter = [.. reworded.Select(page => page.Path)],
            };
    }

    /// <summary>What of the results is different, in words.</summary>
    private static IEnumerable<ReleasedDifference> Differing(ReviewContext context, ConfigurationPair pair)
    {
        var (was, now) = (pair.Before, pair.After);
        (string Word, IEnumerable<string> Before, IEnumerable<string> After)[] parts =
        [
            ("options", Options(was, context.Renames.Of), Options(now, option => option)),
            ("devices", Devices(was, context.Renames.Of), Devices(now, key => key)),
            ("homes", Homes(was, context.Renames.Of), Homes(now, key => key)),
            ("masters", Masters(was), Masters(now)),
            ("cables", Cables(was, context.Renames.Of), Cables(now, key => key)),
            ("cores", Cores(was, context.Renames.Of), Cores(now, key => key)),
            (
                "findings",
                Findings(was, context.Renames.OfFinding, now),
                Findings(now, id => id, was, context.Renames.OfFinding)
            ),
            ("settings", Settings(was, context.Before.Catalogue), Settings(now, context.After.Catalogue)),
        ];
        return parts
            .Select(part => ReleasedDifference.Between(part.Word, part.Before, part.After))
            .OfType<ReleasedDifference>();
    }

    private static IEnumerable<string> Options(EngineeredConfiguration built, Func<OptionId, OptionId> name) =>
        built.Proved.Configuration.Quantities.Select(pick =>
            FormattableString.Invariant($"{name(pick.Key)}={pick.Value}")
        );

    private static IEnumerable<string> Devices(EngineeredConfiguration built, Func<InstanceKey, InstanceKey> name) =>
        built.Report.Fitted.Fitted.Select(instance =>
            $"{name(instance.Key)} {instance.Device.Id.Value} {instance.Station.Id.Value}"
        );

    private static IEnumerable<string> Homes(EngineeredConfiguration built, Func<InstanceKey, InstanceKey> name) =>
        built.Report.Fitted.Cabled.Select(pair => $"{name(pair.Instance.Key)} {pair.Home}");

    private static IEnumerable<string> Masters(EngineeredConfiguration built) =>
        built.Report.Fitted.Masters.Select(master =>
            $"{master.Name.Value} {master.Device.Id.Value} {master.Station.Id.Value}"
        );

    private static IEnumerable<string> Cables(EngineeredConfiguration built, Func<InstanceKey, InstanceKey> name) =>
        built.Report.Cables.Select(cable => $"{CableChanges.Name(cable, name)} {CableChanges.Say(cable)}");

    /// <summary>What is landed where at devices wired core by core.</summary>
    private static IEnumerable<string> Cores(EngineeredConfiguration built, Func<InstanceKey, InstanceKey> name) =>
        built
            .Report.Fitted.Fitted.Where(instance => instance.Device.Leads is not null)
            .SelectMany(instance =>
                instance.Device.Leads!.Cores.Select(core =>
                    $"{name(instance.Key)} core {core.Core} at {core.At}, {core.Carries}"
                )
            );

    /// <summary>Verdicts and values; a check that only one side makes, and that passes, changes no result.</summary>
    private static IEnumerable<string> Findings(
        EngineeredConfiguration built,
        Func<string, string> name,
        EngineeredConfiguration other,
        Func<string, string>? nameOfOther = null
    )
    {
        var shared = other
            .Report.Findings.Select(finding => nameOfOther?.Invoke(finding.Id) ?? finding.Id)
            .ToHashSet(StringComparer.Ordinal);
        return built
            .Report.Findings.Where(finding => finding.Verdict != Verdict.Pass || shared.Contains(name(finding.Id)))
            .Select(finding => $"{name(finding.Id)} {Say(finding.Verdict)}, {finding.Value}, limit {finding.Limit}");
    }

    private static string Say(Verdict verdict) =>
        verdict switch
        {
            Verdict.Pass => "passes",
            Verdict.Fail => "fails",
            Verdict.Accepted => "is accepted",
            _ => "cannot be judged",
        };

    private static IEnumerable<string> Settings(EngineeredConfiguration built, Catalogue catalogue) =>
        built
            .Published.Recipes.SelectMany(recipe =>
                catalogue.Recipes.Where(one => one.Id.Value == recipe.Value && one.Machine == built.Published.Machine)
            )
            .SelectMany(recipe =>
                RecipeChanges
                    .Values(recipe)
                    .Select(value => $"{recipe.Id.Value} {value.Key} {value.Value.Written.Value}")
            )
            .Concat(
                built.Report.Fitted.Fitted.SelectMany(instance =>
                    instance.Fit.Set.Select(set =>
                        $"{instance.Key.Fit}/{instance.Key.Ordinal} {set.Key} {set.Value.Value}"
                    )
                )
            );
}
