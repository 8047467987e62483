using System.Globalization;

namespace Configurator.Cli.Disk;

/// <summary>Judges whether a site may be put in a place: never over anything that a publish did not write.</summary>
internal static class PublishTarget
{
    private const int NamesShown = 5;
    private static readonly string[] CatalogueParts = [.. CatalogueRules.TopFolders, "src", "tests", ".github", ".git"];

    /// <summary>What speaks against the place itself: it holds or lies in what must stay, or is no folder.</summary>
    public static DiskProblem? JudgePlace(PublishPlace place, string catalogue)
    {
        var target = RealPath.Of(place.Target);
        var catalogueRoot = RealPath.Of(catalogue);
        var home = Environment.GetFolderPath(
            Environment.SpecialFolder.UserProfile,
            Environment.SpecialFolderOption.DoNotVerify
        );
        var part = CatalogueParts.FirstOrDefault(name =>
            RealPath.IsWithin(target, RealPath.Of(Path.Combine(catalogueRoot, name)))
        );
        return part is not null ? Unfit(place, $"lies in the catalogue's `{part}`")
            : RealPath.IsWithin(catalogueRoot, target) ? Unfit(place, "holds the catalogue")
            : home.Length > 0 && RealPath.IsWithin(RealPath.Of(home), target) ? Unfit(place, "holds the home folder")
            : Path.GetPathRoot(target) == target ? Unfit(place, "is the root of a disk")
            : JudgeKind(place);
    }

    /// <summary>
    /// What speaks against writing over the folder that lies there now. To be asked by who holds the lock: amid
    /// another's swap a folder shows one site's list and the other's files.
    /// </summary>
    public static DiskProblem? JudgeContent(PublishPlace place) =>
        FileKinds.Of(place.Target) == FileKind.Folder ? JudgeFolder(place.Target) : JudgeKind(place);

    private static DiskProblem? JudgeKind(PublishPlace place) =>
        FileKinds.Of(place.Target) switch
        {
            FileKind.Missing or FileKind.Folder => null,
            FileKind.Link => Unfit(place, "is a link, and the site replaces what lies there"),
            _ => Unfit(place, "is not a folder"),
        };

    private static DiskProblem? JudgeFolder(string folder)
    {
        var isOurs = SiteFolder.IsOurs(folder);
        var foreign = isOurs ? SiteFolder.Foreign(folder) : SiteFolder.Names(folder);
        return foreign.Count == 0
            ? null
            : new(
                isOurs
                    ? $"`{folder}` holds what no publish put there: {List(foreign)}"
                    : $"`{folder}` is not a site that publish wrote, and it is not empty: it holds {List(foreign)}",
                "move that elsewhere, or choose a new or empty folder"
            );
    }

    private static string List(IReadOnlyList<string> names)
    {
        var shown = string.Join(", ", names.Take(NamesShown).Select(name => $"`{CatalogueNames.Escape(name)}`"));
        return names.Count <= NamesShown
            ? shown
            : string.Create(CultureInfo.InvariantCulture, $"{shown} and {names.Count - NamesShown} more");
    }

    private static DiskProblem Unfit(PublishPlace place, string why) =>
        new($"the site cannot be put in `{place.Target}`: it {why}", "choose a new or empty folder for the site");
}
