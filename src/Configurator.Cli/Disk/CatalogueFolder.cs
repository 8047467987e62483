namespace Configurator.Cli.Disk;

/// <summary>Where the catalogue lies, as annotations say it: their files are named from the repository's top, and a
/// workflow runs there.</summary>
internal static class CatalogueFolder
{
    /// <summary>The folder from the current one, with forward slashes; empty where it is that one or lies
    /// outside.</summary>
    public static string FromHere(string catalogue)
    {
        var folder = Path.GetRelativePath(Directory.GetCurrentDirectory(), Path.GetFullPath(catalogue));
        var isOutside =
            Path.IsPathRooted(folder) || folder == "." || folder.Split(Path.DirectorySeparatorChar)[0] == "..";
        return isOutside ? "" : folder.Replace(Path.DirectorySeparatorChar, '/');
    }
}
