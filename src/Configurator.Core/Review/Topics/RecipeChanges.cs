using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Topics;

/// <summary>Recipes, and what sensors and actuators are set to.</summary>
internal static class RecipeChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) => Recipes(context).Concat(Fixed(context));

    /// <summary>What a recipe says, by fit, instance and parameter.</summary>
    public static IEnumerable<KeyValuePair<string, SettingValue>> Values(Recipe recipe) =>
        recipe.Settings.SelectMany(settings =>
            settings.Values.Select(value =>
                KeyValuePair.Create(
                    settings.Ordinal is { } ordinal
                        ? FormattableString.Invariant($"`{settings.Fit.Value}/{ordinal}` `{value.Key}`")
                        : $"`{settings.Fit.Value}` `{value.Key}`",
                    value.Value
                )
            )
        );

    private static IEnumerable<Change> Recipes(ReviewContext context)
    {
        var before = context.Before.Catalogue.Recipes.ToDictionary(recipe =>
            (Machine: context.Renames.Of(recipe.Machine), recipe.Id.Value)
        );
        var after = context.After.Catalogue.Recipes.ToDictionary(recipe => (recipe.Machine, recipe.Id.Value));
        foreach (var id in before.Keys.Union(after.Keys).OrderBy(id => id.Machine).ThenBy(id => id.Value))
        {
            var (was, now) = (before.GetValueOrDefault(id), after.GetValueOrDefault(id));
            var changes = was is null || now is null ? [Whole(was, now, id.Machine)] : Compare(was, now);
            foreach (var change in changes)
            {
                yield return change;
            }
        }
    }

    private static Change Whole(Recipe? was, Recipe? now, MachineId machine) =>
        new(
            SettingKinds.RecipeChanged,
            $"`{(now ?? was)!.Id.Value}`",
            [now is null ? ReviewPlace.Before(was!.Id.Span) : ReviewPlace.After(now.Id.Span)]
        )
        {
            Machine = machine,
            Remark = (now is null ? "removed: " : "added: ") + (now ?? was)!.Title.In(Text.BaseLanguage),
        };

    private static IEnumerable<Change> Compare(Recipe was, Recipe now) =>
        Compare(
            now.Machine,
            $"recipe `{now.Id.Value}`",
            Values(was).Select(value => KeyValuePair.Create(value.Key, value.Value.Written)),
            Values(now).Select(value => KeyValuePair.Create(value.Key, value.Value.Written)),
            now.Id.Span
        );

    /// <summary>Parameters that are the same in every recipe.</summary>
    private static IEnumerable<Change> Fixed(ReviewContext context) =>
        context.Machines.SelectMany(pair =>
        {
            var before = pair.Before.Instances.ToDictionary(instance => context.Renames.Of(instance.Key));
            return pair
                .After.Instances.Where(instance => before.ContainsKey(instance.Key))
                .SelectMany(instance =>
                    Compare(
                        pair.Id,
                        "every recipe",
                        Set(instance.Key, before[instance.Key].Fit),
                        Set(instance.Key, instance.Fit),
                        instance.Fit.Name.Span
                    )
                );
        });

    private static IEnumerable<KeyValuePair<string, Located<string>>> Set(InstanceKey key, Fit fit) =>
        fit.Set.Select(set => KeyValuePair.Create($"`{key}` `{set.Key}`", set.Value));

    private static IEnumerable<Change> Compare(
        MachineId machine,
        string where,
        IEnumerable<KeyValuePair<string, Located<string>>> before,
        IEnumerable<KeyValuePair<string, Located<string>>> after,
        SourceSpan otherwise
    )
    {
        var (was, now) = (ByName(before), ByName(after));
        return was
            .Keys.Union(now.Keys, StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(name => (Name: name, Was: Found(was, name), Now: Found(now, name)))
            .Where(value => value.Was?.Value != value.Now?.Value)
            .Select(value => new Change(
                SettingKinds.SettingChanged,
                value.Name,
                [
                    .. value.Now is { } set ? ImmutableArray.Create(ReviewPlace.After(set.Span)) : [],
                    .. value.Was is { } old ? ImmutableArray.Create(ReviewPlace.Before(old.Span)) : [],
                    ReviewPlace.After(otherwise),
                ]
            )
            {
                Machine = machine,
                Before = value.Was?.Value ?? "",
                After = value.Now?.Value ?? "",
                Remark = where,
            });
    }

    private static Dictionary<string, Located<string>> ByName(
        IEnumerable<KeyValuePair<string, Located<string>>> values
    ) =>
        values
            .DistinctBy(value => value.Key, StringComparer.Ordinal)
            .ToDictionary(value => value.Key, value => value.Value, StringComparer.Ordinal);

    private static Located<string>? Found(Dictionary<string, Located<string>> values, string name) =>
        values.TryGetValue(name, out var value) ? value : null;
}
