using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Topics;

/// <summary>Finished pages of both sides, by what they say. Only sides without errors have pages.</summary>
internal sealed class SiteComparison
{
    private readonly ImmutableSortedDictionary<string, PageContents> _before;
    private readonly ImmutableSortedDictionary<string, PageContents> _after;

    private SiteComparison(ReviewSide before, ReviewSide after)
    {
        _before = Contents(before);
        _after = Contents(after);
    }

    public static SiteComparison? Of(ReviewSide before, ReviewSide after, ICollection<string> limits)
    {
        if (!before.Checked.HasErrors && !after.Checked.HasErrors)
        {
            return new(before, after);
        }

        limits.Add("pages are not compared: a side with errors has none");
        return null;
    }

    /// <summary>Pages of a published configuration that say something else.</summary>
    public ImmutableArray<ChangedPage> ChangedOf(PublishedConfiguration published)
    {
        var folder = PagePaths.Of(published)[..^"index.html".Length];
        return [.. Changed().Where(page => page.Path.StartsWith(folder, StringComparison.Ordinal))];
    }

    public IEnumerable<Change> Changes(ReviewSide before, ReviewSide after) =>
        Templates(before, after)
            .Concat(
                _before
                    .Where(page => !_after.ContainsKey(page.Key))
                    .Select(page => Tell(SiteKinds.PageRemoved, page.Key, page.Value) with { PagesBefore = [page.Key] })
            )
            .Concat(
                _after
                    .Where(page => !_before.ContainsKey(page.Key))
                    .Select(page => Tell(SiteKinds.PageAdded, page.Key, page.Value) with { PagesAfter = [page.Key] })
            )
            .Concat(
                Changed()
                    .Select(page =>
                        Tell(SiteKinds.PageChanged, page.Path, _after[page.Path]) with
                        {
                            After = page.Sections,
                            PagesBefore = [page.Path],
                            PagesAfter = [page.Path],
                        }
                    )
            );

    private IEnumerable<ChangedPage> Changed() =>
        _after
            .Where(page => _before.TryGetValue(page.Key, out var was) && was.Whole != page.Value.Whole)
            .Select(page => new ChangedPage(page.Key, page.Value.Title, page.Value.ChangedSince(_before[page.Key])));

    private static Change Tell(ChangeKind kind, string path, PageContents page) =>
        new(kind, $"`{path}`", []) { Remark = page.Title };

    private static IEnumerable<Change> Templates(ReviewSide before, ReviewSide after)
    {
        var was = Files(before.Sources);
        var now = Files(after.Sources);
        return was
            .Keys.Union(now.Keys, StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Where(path =>
                !(
                    was.TryGetValue(path, out var old)
                    && now.TryGetValue(path, out var bytes)
                    && old.Span.SequenceEqual(bytes.Span)
                )
            )
            .Select(path => new Change(
                SiteKinds.TemplatesChanged,
                $"`{path}`",
                [now.ContainsKey(path) ? ReviewPlace.After(new(path, 1, 1, 0)) : ReviewPlace.Before(new(path, 1, 1, 0))]
            )
            {
                Remark =
                    !was.ContainsKey(path) ? "added"
                    : !now.ContainsKey(path) ? "removed"
                    : "changed",
            });
    }

    private static Dictionary<string, ReadOnlyMemory<byte>> Files(SourceSet sources) =>
        sources
            .Files.Where(file =>
                file.Path.StartsWith("site-templates/", StringComparison.Ordinal)
                && !file.Path.StartsWith("site-templates/schemas/", StringComparison.Ordinal)
            )
            .ToDictionary(file => file.Path, file => file.Bytes, StringComparer.Ordinal);

    /// <summary>The revision of the definitions is left out: every page carries it.</summary>
    private static ImmutableSortedDictionary<string, PageContents> Contents(ReviewSide side) =>
        Documenter
            .Compose(side.Engineered, "")
            .Value.Pages.AsParallel()
            .Select(page => KeyValuePair.Create(page.Path, PageContents.Of(page)))
            .ToImmutableSortedDictionary(StringComparer.Ordinal);
}
