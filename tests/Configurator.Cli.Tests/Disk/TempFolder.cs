using System.Text;

namespace Configurator.Cli.Tests.Disk;

/// <summary>A folder of its own for one test, gone afterwards with all that lies in it.</summary>
internal sealed class TempFolder : IDisposable
{
    public TempFolder()
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Root, (UnixFileMode)0b111_101_101);
        }
    }

    public string Root { get; } = Directory.CreateTempSubdirectory("configurator-").FullName;

    public string this[string path] => Path.Combine(Root, path);

    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[path])!);
        File.WriteAllText(this[path], text);
    }

    /// <summary>A file of that size which takes no room on the disk.</summary>
    public void WriteSparse(string path, long bytes)
    {
        Write(path, "");
        using var file = File.OpenWrite(this[path]);
        file.SetLength(bytes);
    }

    public void Link(string path, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[path])!);
        File.CreateSymbolicLink(this[path], to);
    }

    /// <summary>Every entry below a path with its bytes or its link's aim: equal only if all is equal.</summary>
    public string Tree(string path)
    {
        var lines = new StringBuilder();
        Describe(this[path], "", lines);
        return lines.ToString();
    }

    public string[] Names(string path) =>
        [.. Directory.EnumerateFileSystemEntries(this[path]).Select(Path.GetFileName).Order(StringComparer.Ordinal)!];

    public void Dispose()
    {
        try
        {
            Directory.Delete(Root, recursive: true);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            Shell.Run(Path.GetTempPath(), $"chmod -R u+rwX '{Root}' && rm -rf '{Root}'");
        }
    }

    private static void Describe(string path, string shown, StringBuilder lines)
    {
        if (new FileInfo(path).LinkTarget is { } aim)
        {
            lines.Append(shown).Append(" -> ").Append(aim).Append('\n');
        }
        else if (Directory.Exists(path))
        {
            lines.Append(shown).Append("/\n");
            foreach (var entry in Directory.EnumerateFileSystemEntries(path).Order(StringComparer.Ordinal))
            {
                Describe(entry, $"{shown}/{Path.GetFileName(entry)}", lines);
            }
        }
        else
        {
            lines.Append(shown).Append(": ").Append(Encoding.Latin1.GetString(File.ReadAllBytes(path))).Append('\n');
        }
    }
}
