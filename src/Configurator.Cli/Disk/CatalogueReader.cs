using System.Globalization;
using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>Reads a catalogue's definitions and templates from disk, trusting nothing that lies there.</summary>
internal static class CatalogueReader
{
    /// <summary>
    /// All that lies below <c>machines</c>, <c>options</c> and <c>site-templates</c>, but for hidden files and editors'
    /// leavings. What is not read for another reason is listed as refused. No link is followed, and nothing but a
    /// regular file is opened.
    /// </summary>
    public static CatalogueReading Read(string folder)
    {
        try
        {
            return Directory.Exists(folder) ? Read(CatalogueWalk.Through(folder), folder) : NoFolder(folder);
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            return CatalogueReading.Failed(DiskProblem.From($"cannot read the catalogue `{folder}`", failure));
        }
    }

    private static CatalogueReading Read(CatalogueWalk walk, string folder)
    {
        if (walk.HasTooMany)
        {
            return Beyond(folder, $"has more than {CatalogueRules.EntriesMax} files and folders");
        }

        if (walk.Files.Sum(file => file.Bytes) > CatalogueRules.BytesMax)
        {
            return Beyond(folder, $"has more than {CatalogueRules.BytesMax >> 20} MiB of files");
        }

        return HasDefinitions(folder) ? new(Read(walk), null) : NoDefinitions(folder, walk);
    }

    private static SourceSet Read(CatalogueWalk walk)
    {
        var files = new List<SourceFile>();
        var refused = new List<RefusedFile>(walk.Refused);
        foreach (var file in walk.Files)
        {
            try
            {
                files.Add(new(file.Path, Bytes(file)));
            }
            catch (Exception failure) when (DiskProblem.Caused(failure))
            {
                refused.Add(CatalogueRules.IsUnreadable(file.Path, failure));
            }
        }

        return SourceSet.Of(files, refused);
    }

    /// <summary>At most as many bytes as were judged when the file was found, should it have grown since.</summary>
    private static ReadOnlyMemory<byte> Bytes(CatalogueFile file)
    {
        using var handle = File.OpenHandle(file.FullPath, share: FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Bytes];
        var filled = 0;
        while (filled < bytes.Length && RandomAccess.Read(handle, bytes.AsSpan(filled), filled) is var read and > 0)
        {
            filled += read;
        }

        return bytes.AsMemory(0, filled);
    }

    private static bool HasDefinitions(string folder) =>
        CatalogueRules.TopFolders.Any(top =>
            top != CatalogueRules.Templates && FileKinds.Of(Path.Combine(folder, top)) != FileKind.Missing
        );

    private static CatalogueReading NoFolder(string folder) =>
        CatalogueReading.Failed(
            new($"there is no folder `{folder}`", "give the folder that holds `machines` and `options`")
        );

    private static CatalogueReading NoDefinitions(string folder, CatalogueWalk walk) =>
        CatalogueReading.Failed(
            new(
                $"`{folder}` has neither a folder `machines` nor a folder `options`",
                walk.Misnamed is { } misnamed
                    ? $"in `{misnamed.Path}`: {misnamed.Fix}"
                    : "give the folder that holds them"
            )
        );

    private static CatalogueReading Beyond(string folder, FormattableString excess) =>
        CatalogueReading.Failed(
            new(
                $"the catalogue `{folder}` {excess.ToString(CultureInfo.InvariantCulture)}",
                "keep only definitions, notes and templates there"
            )
        );
}
