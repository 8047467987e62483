namespace Configurator.Cli.Disk;

/// <summary>The site's folder and the names beside it that a publish uses while it runs.</summary>
internal sealed record PublishPlace(string Target)
{
    public string Parent => Path.GetDirectoryName(Target) ?? Target;

    /// <summary>Where the new site is built; after a swap in one instant, where the old one lies.</summary>
    public string Staging => Target + ".new-while-publishing";

    /// <summary>Where the old site lies between two renames.</summary>
    public string Old => Target + ".old-while-publishing";

    public string Lock => Target + ".lock";

    public static PublishPlace Of(string target) => new(Path.TrimEndingDirectorySeparator(Path.GetFullPath(target)));
}
