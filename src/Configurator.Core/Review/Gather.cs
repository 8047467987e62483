using System.Collections.Immutable;

namespace Configurator.Core.Review;

/// <summary>Says once what is the same in many configurations.</summary>
internal static class Gather
{
    /// <param name="changes">Each of one configuration.</param>
    public static IEnumerable<Change> Alike(IEnumerable<Change> changes) =>
        changes
            .GroupBy(change =>
                (change.Kind, change.Machine, change.Subject, change.Before, change.After, change.Remark)
            )
            .Select(alike =>
                alike.First() with
                {
                    Configurations =
                    [
                        .. alike
                            .SelectMany(change => change.Configurations)
                            .Distinct(StringComparer.Ordinal)
                            .Order(StringComparer.Ordinal),
                    ],
                    Weight = alike.Max(change => change.Weight),
                    PagesBefore = Pages(alike.SelectMany(change => change.PagesBefore)),
                    PagesAfter = Pages(alike.SelectMany(change => change.PagesAfter)),
                }
            );

    /// <summary>What is said otherwise of a thing that one side or both have; null and nothing said where it is not
    /// there.</summary>
    public static IEnumerable<Differing<TKey, T>> Differing<TKey, T>(
        IReadOnlyDictionary<TKey, T> before,
        IReadOnlyDictionary<TKey, T> after,
        Func<T, string> say,
        IComparer<TKey>? order = null
    )
        where T : class =>
        before
            .Keys.Union(after.Keys)
            .Order(order)
            .Select(key => new Differing<TKey, T>(
                key,
                before.GetValueOrDefault(key),
                after.GetValueOrDefault(key),
                say
            ))
            .Where(thing => thing.Before != thing.After);

    private static ImmutableArray<string> Pages(IEnumerable<string> pages) =>
        [.. pages.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
