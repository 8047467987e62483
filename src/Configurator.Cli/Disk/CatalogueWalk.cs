using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>Goes through a catalogue's folders and sorts what it finds into files to read and files refused.</summary>
internal sealed class CatalogueWalk
{
    private readonly List<CatalogueFile> _files = [];
    private readonly List<RefusedFile> _refused = [];
    private int _entriesLeft = CatalogueRules.EntriesMax;

    public IReadOnlyList<CatalogueFile> Files => _files;

    public IReadOnlyList<RefusedFile> Refused => _refused;

    /// <summary>A top folder that would be read if its name were in lower case.</summary>
    public RefusedFile? Misnamed { get; private set; }

    /// <summary>True once more entries lay there than are allowed; the walk has then stopped somewhere.</summary>
    public bool HasTooMany => _entriesLeft < 0;

    /// <exception cref="IOException">The catalogue's own folder cannot be listed.</exception>
    /// <exception cref="UnauthorizedAccessException">The catalogue's own folder may not be listed.</exception>
    public static CatalogueWalk Through(string catalogue)
    {
        var walk = new CatalogueWalk();
        var entries = new DirectoryInfo(catalogue).EnumerateFileSystemInfos();
        foreach (var entry in entries.OrderBy(entry => entry.Name, StringComparer.Ordinal))
        {
            walk.Top(entry);
        }

        return walk;
    }

    private void Top(FileSystemInfo entry)
    {
        var right = CatalogueRules.TopFolders.FirstOrDefault(top =>
            string.Equals(top, entry.Name, StringComparison.OrdinalIgnoreCase)
        );
        if (right is null)
        {
            return;
        }

        if (right != entry.Name)
        {
            Misnamed ??= CatalogueRules.HasWrongCase(entry.Name, right);
            _refused.Add(CatalogueRules.HasWrongCase(entry.Name, right));
        }
        else if (FileKinds.Of(entry.FullName) is FileKind.Regular)
        {
            _refused.Add(CatalogueRules.IsNoFolder(entry.Name));
        }
        else
        {
            Visit(entry, entry.Name);
        }
    }

    private void Visit(FileSystemInfo entry, string path)
    {
        try
        {
            Sort(entry, path);
        }
        catch (FileNotFoundException)
        {
            // Editors write and remove files of their own while we look: gone again is as if it had never been there.
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            _refused.Add(CatalogueRules.IsUnreadable(path, failure));
        }
    }

    private void Sort(FileSystemInfo entry, string path)
    {
        switch (FileKinds.Of(entry.FullName))
        {
            case FileKind.Link:
                _refused.Add(CatalogueRules.IsLink(path));
                break;
            case FileKind.Special:
                _refused.Add(CatalogueRules.IsSpecial(path));
                break;
            case FileKind.Folder when path.Count('/') >= CatalogueRules.DepthMax:
                _refused.Add(CatalogueRules.IsTooDeep(path));
                break;
            case FileKind.Folder:
                Folder(entry.FullName, path);
                break;
            case FileKind.Regular:
                File(new(path, entry.FullName, new FileInfo(entry.FullName).Length));
                break;
        }
    }

    private void File(CatalogueFile file)
    {
        if (CatalogueRules.Judge(file) is { } refused)
        {
            _refused.Add(refused);
        }
        else
        {
            _files.Add(file);
        }
    }

    private void Folder(string fullPath, string path)
    {
        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in Entries(fullPath))
        {
            var entryPath = $"{path}/{CatalogueNames.Escape(entry.Name)}";
            if (!CatalogueNames.IsPlain(entry.Name))
            {
                _refused.Add(CatalogueRules.HasOddName(entryPath));
            }
            else if (!taken.TryAdd(entry.Name, entryPath))
            {
                _refused.Add(CatalogueRules.Collides(entryPath, taken[entry.Name]));
            }
            else
            {
                Visit(entry, entryPath);
            }
        }
    }

    /// <summary>In ordinal order, and never more than are allowed in all, however many there are.</summary>
    private List<FileSystemInfo> Entries(string fullPath)
    {
        List<FileSystemInfo> entries =
        [
            .. new DirectoryInfo(fullPath)
                .EnumerateFileSystemInfos()
                .Where(entry => !CatalogueNames.IsIgnored(entry.Name))
                .Take(Math.Max(0, _entriesLeft + 1)),
        ];
        _entriesLeft -= entries.Count;
        entries.Sort((left, right) => string.CompareOrdinal(left.Name, right.Name));
        return entries;
    }
}
