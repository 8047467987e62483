using System.IO.Enumeration;

namespace Configurator.Cli.Disk;

/// <summary>Tells what a folder is that a site is to be written over, or that an earlier publish left behind.</summary>
internal static class SiteFolder
{
    /// <summary>The names that lie directly in it, in ordinal order.</summary>
    public static IReadOnlyList<string> Names(string folder) =>
        [.. Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)!];

    /// <summary>Whether a publish of ours once wrote it, whatever has been added since.</summary>
    public static bool IsOurs(string folder) =>
        Checksums.In(folder) is { } sums && sums.ByPath.ContainsKey(SiteMarker.FileName) && SiteMarker.Marks(folder);

    /// <summary>What lies there besides the regular files its checksums list, in ordinal order.</summary>
    public static IReadOnlyList<string> Foreign(string folder)
    {
        var listed = Checksums.In(folder)?.ByPath;
        return
        [
            .. Entries(folder)
                .Where(path =>
                    path != Checksums.FileName && listed?.ContainsKey(path) != true
                    || FileKinds.Of(Path.Combine(folder, path)) != FileKind.Regular
                )
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>Whether every file its checksums list is there with the listed bytes, and nothing else.</summary>
    public static bool IsWhole(string folder)
    {
        var sums = FileKinds.Of(folder) == FileKind.Folder ? Checksums.In(folder) : null;
        return sums is not null
            && Foreign(folder).Count == 0
            && Entries(folder).Count() == sums.ByPath.Count + 1
            && sums.ByPath.Keys.All(path => sums.Matches(folder, path));
    }

    /// <summary>Relative paths of all that is not a folder. A link counts as a file and is never followed.</summary>
    private static FileSystemEnumerable<string> Entries(string folder) =>
        new(
            folder,
            (ref FileSystemEntry entry) =>
                Path.GetRelativePath(folder, entry.ToFullPath()).Replace(Path.DirectorySeparatorChar, '/'),
            new EnumerationOptions
            {
                RecurseSubdirectories = true,
                AttributesToSkip = FileAttributes.None,
                IgnoreInaccessible = false,
            }
        )
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => !IsFolder(ref entry),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => IsFolder(ref entry),
        };

    private static bool IsFolder(ref FileSystemEntry entry) =>
        entry.IsDirectory && !entry.Attributes.HasFlag(FileAttributes.ReparsePoint);
}
