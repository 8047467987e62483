using System.Runtime.ExceptionServices;

namespace Configurator.Cli.Disk;

/// <summary>Writes the new site beside the old one and makes sure that the disk has it.</summary>
internal static class Staging
{
    /// <summary>Writes every file, and the checksums last. The folder must not exist.</summary>
    public static Checksums Write(
        string folder,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        Action<string> step,
        CancellationToken cancel
    )
    {
        Directory.CreateDirectory(folder);
        step(PublishSteps.StagingMade);
        foreach (var (path, bytes) in files.OrderBy(file => file.Key, StringComparer.Ordinal))
        {
            cancel.ThrowIfCancellationRequested();
            WriteNew(PathIn(folder, path), bytes.Span);
            step(PublishSteps.FileWritten);
        }

        var sums = Checksums.Of(files);
        WriteNew(Path.Combine(folder, Checksums.FileName), sums.ToBytes());
        step(PublishSteps.ChecksumsWritten);
        return sums;
    }

    /// <summary>Has the disk keep every file and reads it back.</summary>
    /// <exception cref="IOException">A file does not read back as it was written.</exception>
    public static void Verify(string folder, Checksums sums, CancellationToken cancel)
    {
        // Many small files wait for the disk, not for a processor: several at once let it join its writes.
        var options = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = 16 };
        try
        {
            Parallel.ForEach([.. sums.ByPath.Keys, Checksums.FileName], options, path => Verify(folder, sums, path));
        }
        catch (AggregateException failures)
        {
            ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }
    }

    private static void Verify(string folder, Checksums sums, string path)
    {
        var fullPath = Path.Combine(folder, path);
        using (var handle = File.OpenHandle(fullPath, access: FileAccess.ReadWrite))
        {
            RandomAccess.FlushToDisk(handle);
        }

        var isKept =
            path == Checksums.FileName
                ? File.ReadAllBytes(fullPath).AsSpan().SequenceEqual(sums.ToBytes())
                : sums.Matches(folder, path);
        if (!isKept)
        {
            throw new IOException($"`{fullPath}` reads back differently from what was written");
        }
    }

    private static void WriteNew(string fullPath, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(fullPath)!);
        using var handle = File.OpenHandle(fullPath, FileMode.CreateNew, FileAccess.Write);
        DiskWrite.All(handle, bytes, fullPath);
    }

    /// <summary>The names were judged before; this holds should that ever be forgotten.</summary>
    private static string PathIn(string folder, string path)
    {
        var fullPath = Path.GetFullPath(Path.Combine(folder, path));
        return fullPath.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            ? fullPath
            : throw new ArgumentException($"`{path}` leads out of the site", nameof(path));
    }
}
