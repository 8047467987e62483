namespace Configurator.Cli.Disk;

/// <summary>Reads one side of a review: a folder that holds definitions, or else a revision.</summary>
internal static class ReviewedReader
{
    /// <param name="catalogue">The folder whose repository has the revision.</param>
    public static CatalogueReading Read(string side, string catalogue) =>
        IsFolder(side) ? CatalogueReader.Read(side) : GitReader.Read(catalogue, side);

    /// <summary>A folder that happens to be called like a branch holds no definitions.</summary>
    public static bool IsFolder(string side) =>
        Directory.Exists(side)
        && (
            side.StartsWith('.')
            || Path.IsPathRooted(side)
            || CatalogueRules.TopFolders.Any(top => Directory.Exists(Path.Combine(side, top)))
        );
}
