namespace Configurator.Cli.Disk;

/// <summary>Where a path leads once every link in it is followed; what does not exist yet is kept as written.</summary>
internal static class RealPath
{
    private const int LinksMax = 40;

    /// <exception cref="IOException">The links run in a circle.</exception>
    public static string Of(string path) => Of(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)), LinksMax);

    /// <summary>Whether the path is the folder or lies below it. Ignores case, as some file systems do.</summary>
    public static bool IsWithin(string path, string folder)
    {
        var start = Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar;
        return (path + Path.DirectorySeparatorChar).StartsWith(start, StringComparison.OrdinalIgnoreCase);
    }

    private static string Of(string path, int linksLeft)
    {
        if (linksLeft == 0)
        {
            throw new IOException($"`{path}` leads through too many links");
        }

        if (Path.GetDirectoryName(path) is not { } parent)
        {
            return path;
        }

        var here = Path.Combine(Of(parent, linksLeft), Path.GetFileName(path));
        return FileKinds.Of(here) == FileKind.Link && File.ResolveLinkTarget(here, returnFinalTarget: false) is { } next
            ? Of(Path.GetFullPath(next.FullName), linksLeft - 1)
            : here;
    }
}
