using System.Collections.Immutable;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Printing;

/// <summary>Changes of pages, one for all pages of a sort that changed in the same place: a list by path hides which
/// documents there are.</summary>
internal static class PageGroups
{
    public static ImmutableArray<Change> Of(ImmutableArray<Change> changes) =>
        changes[0].Kind.Topic != ReviewTopic.Site || changes[0].Kind == SiteKinds.TemplatesChanged
            ? changes
            :
            [
                .. changes
                    .GroupBy(change => (Sort: SortOf(change.Subject.Trim('`')), change.After))
                    .Select(alike => alike.Count() == 1 ? alike.First() : Tell(alike.Key.Sort, [.. alike])),
            ];

    private static Change Tell((string Folder, string File) sort, ImmutableArray<Change> alike) =>
        alike[0] with
        {
            Subject = FormattableString.Invariant($"`{sort.File}` of {alike.Length} {sort.Folder}"),
            Remark = "",
        };

    /// <summary>Pages of machines and their configurations are called by their file, those of a list by it.</summary>
    private static (string Folder, string File) SortOf(string path)
    {
        var parts = path.Split('/');
        return parts switch
        {
            ["machines", _, "configurations", _, var file] => ("configurations", file),
            ["machines", _, var file] => ("machines", file),
            [var folder, _] => (folder, "*.html"),
            _ => ("", path),
        };
    }
}
