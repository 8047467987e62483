using System.Buffers;

namespace Configurator.Cli.Disk;

/// <summary>Which names a file of the site may have: such as work on every disk and in every address.</summary>
internal static class SiteNames
{
    private static readonly SearchValues<char> Allowed = SearchValues.Create(
        "abcdefghijklmnopqrstuvwxyz0123456789._/-"
    );

    /// <summary>No name that is hidden, empty in parts, or leads out of the folder.</summary>
    public static bool IsFit(string path) =>
        path.Length > 0
        && !path.AsSpan().ContainsAnyExcept(Allowed)
        && char.IsAsciiLetterOrDigit(path[0])
        && path.Split('/').All(part => part.Length > 0 && part[0] != '.');

    /// <summary>The first name that is not fit to be published, or null.</summary>
    public static DiskProblem? Judge(IEnumerable<string> paths)
    {
        var unfit = paths.Where(path => !IsFit(path)).Order(StringComparer.Ordinal).FirstOrDefault();
        return unfit is null
            ? null
            : new(
                $"`{CatalogueNames.Escape(unfit)}` is not a name that can be published",
                "use lower-case letters, digits, hyphens, underscores and dots, a letter or digit first"
            );
    }
}
