using Configurator.Site.Rendering;

namespace Configurator.Cli.Disk;

/// <summary>
/// Compiled templates in a folder of the user's own. A cache and nothing more: what cannot be read is compiled again,
/// what cannot be written is not kept, and the site has the same bytes with it and without.
/// </summary>
internal sealed class TemplateCache(string folder) : ITemplateStore
{
    private const int BytesMax = 8 << 20;
    private const int FilesMax = 1000;
    private const string Ending = ".template";
    private const UnixFileMode Own = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode Others =
        UnixFileMode.GroupRead
        | UnixFileMode.GroupWrite
        | UnixFileMode.GroupExecute
        | UnixFileMode.OtherRead
        | UnixFileMode.OtherWrite
        | UnixFileMode.OtherExecute;

    private readonly Lazy<bool> _isPrivate = new(() => MakePrivate(folder));

    /// <summary>Below the folder for caches; null where the user has none.</summary>
    /// <remarks>Source: XDG Base Directory Specification 0.8; on Windows the local application data.</remarks>
    public static TemplateCache? OfUser()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        var caches =
            OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } named ? named
            : home.Length > 0 ? Path.Combine(home, ".cache")
            : "";
        return Path.IsPathFullyQualified(caches) ? new(Path.Combine(caches, "configurator-templates")) : null;
    }

    public byte[]? Load(string name)
    {
        try
        {
            var path = PathOf(name);
            return _isPrivate.Value && FileKinds.Of(path) == FileKind.Regular && new FileInfo(path).Length <= BytesMax
                ? File.ReadAllBytes(path)
                : null;
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            return null;
        }
    }

    /// <summary>Whole or not at all: under a name of its own first, then renamed.</summary>
    public void Save(string name, byte[] bytes)
    {
        try
        {
            if (_isPrivate.Value)
            {
                Clear();
                var beside = Path.Combine(folder, Path.GetRandomFileName());
                File.WriteAllBytes(beside, bytes);
                File.Move(beside, PathOf(name), overwrite: true);
            }
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            // Not kept: the next run compiles it again.
        }
    }

    private string PathOf(string name) => Path.Combine(folder, name + Ending);

    /// <summary>What older versions and edited templates left behind does not grow without end.</summary>
    private void Clear()
    {
        var files = Directory.GetFiles(folder);
        if (files.Length > FilesMax)
        {
            Array.ForEach(files, File.Delete);
        }
    }

    /// <summary>False where others than the user could have put something there, or nothing can be.</summary>
    private static bool MakePrivate(string folder)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
                return FileKinds.Of(folder) == FileKind.Folder;
            }

            Directory.CreateDirectory(folder, Own);
            return FileKinds.Of(folder) == FileKind.Folder
                && (File.GetUnixFileMode(folder) & Others) == UnixFileMode.None
                && Native.IsOwn(folder);
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            return false;
        }
    }
}
