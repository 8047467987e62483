using System.Globalization;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Configurator.Cli.Disk;

/// <summary>
/// Keeps two publishes from working on one place. The lock is the operating system's on an open file, so a run that
/// is killed frees it; the file it leaves is taken over.
/// </summary>
internal sealed class PublishLock : IDisposable
{
    private const string Opening = "configurator is publishing: ";
    private const int BytesMax = 512;
    private readonly FileStream _file;

    private PublishLock(FileStream file, string? takenOverFrom)
    {
        _file = file;
        TakenOverFrom = takenOverFrom;
    }

    /// <summary>Who left the lock behind, or null.</summary>
    public string? TakenOverFrom { get; }

    /// <returns>Exactly one of the two.</returns>
    /// <exception cref="IOException">The file cannot be written there.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written there.</exception>
    public static (PublishLock? Lock, DiskProblem? Problem) Take(string path)
    {
        if (!IsOurs(path))
        {
            return (null, new($"`{path}` is in the way: it is not a lock of publish", "move it elsewhere"));
        }

        return Open(path) is { } file
            ? (Signed(file, path), null)
            : (null, new($"another publish is at work: {Holder(path)} holds `{path}`", "wait until it has ended"));
    }

    /// <summary>Removes the file as well.</summary>
    public void Dispose() => _file.Dispose();

    /// <summary>
    /// Null where another holds it. With these very options .NET deletes the file before it lets go of the lock, and
    /// opens anew when the file it locked is no longer the one at the path.
    /// </summary>
    private static FileStream? Open(string path)
    {
        try
        {
            return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException failure) when (IsHeldElsewhere(failure))
        {
            return null;
        }
    }

    /// <summary>The numbers for "would block" on Linux and macOS and for a sharing violation on Windows.</summary>
    private static bool IsHeldElsewhere(IOException failure) =>
        failure.HResult is 11 or 35 or unchecked((int)0x80070020);

    private static PublishLock Signed(FileStream file, string path)
    {
        try
        {
            return new(file, Sign(file, path));
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <returns>Who had signed the file before, or null.</returns>
    private static string? Sign(FileStream file, string path)
    {
        var left = Name(Text(file.SafeFileHandle));
        var holder = string.Create(
            CultureInfo.InvariantCulture,
            $"{Opening}process {Environment.ProcessId} on {Environment.MachineName}\n"
        );
        file.SetLength(0);
        DiskWrite.All(file.SafeFileHandle, Encoding.UTF8.GetBytes(holder), path);
        return left;
    }

    /// <summary>The holder may have been killed before it had signed to the end, or have come no further yet.</summary>
    private static bool IsOurs(string path)
    {
        switch (FileKinds.Of(path))
        {
            case FileKind.Missing:
                return true;
            case FileKind.Regular:
                using (var file = Native.OpenUnlocked(path))
                {
                    return file is null || IsSignature(Text(file));
                }

            default:
                return false;
        }
    }

    private static bool IsSignature(string text) =>
        Opening.StartsWith(text, StringComparison.Ordinal) || Name(text) is not null;

    private static string Holder(string path)
    {
        using var file = Native.OpenUnlocked(path);
        return file is not null && Name(Text(file)) is { } name ? name : "a process that gives no name";
    }

    private static string? Name(string text) =>
        text.StartsWith(Opening, StringComparison.Ordinal)
            ? CatalogueNames.Escape(text[Opening.Length..].TrimEnd('\n'))
            : null;

    private static string Text(SafeFileHandle file)
    {
        Span<byte> bytes = stackalloc byte[BytesMax];
        return Encoding.UTF8.GetString(bytes[..RandomAccess.Read(file, bytes, 0)]);
    }
}
