namespace Configurator.Cli.Disk;

/// <summary>What lies at a path. Special is what may block or never end when opened: pipe, socket, device.</summary>
internal enum FileKind
{
    Missing,
    Regular,
    Folder,
    Link,
    Special,
}

internal static class FileKinds
{
    private const int RegularType = 0x8000;

    /// <summary>Looks at the entry itself: follows no link and opens nothing.</summary>
    public static FileKind Of(string path)
    {
        var attributes = new FileInfo(path).Attributes;
        if (attributes == (FileAttributes)(-1))
        {
            return FileKind.Missing;
        }

        if (attributes.HasFlag(FileAttributes.ReparsePoint))
        {
            return FileKind.Link;
        }

        if (attributes.HasFlag(FileAttributes.Directory))
        {
            return FileKind.Folder;
        }

        return Native.TypeOf(path) is null or RegularType ? FileKind.Regular : FileKind.Special;
    }
}
