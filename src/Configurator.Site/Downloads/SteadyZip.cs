using System.IO.Compression;

namespace Configurator.Site.Downloads;

/// <summary>Packs an archive anew, so that the same contents give the same bytes: entries in ordinal order, no time of
/// day.</summary>
internal static class SteadyZip
{
    /// <summary>The first day that an archive can name. Source: ZIP application note 4.4.6, from memory.</summary>
    private static readonly DateTimeOffset FirstDay = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static ReadOnlyMemory<byte> Of(byte[] archive)
    {
        using var packed = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(archive), ZipArchiveMode.Read))
        using (var to = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries.OrderBy(entry => entry.FullName, StringComparer.Ordinal))
            {
                var copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = FirstDay;
                using var source = entry.Open();
                using var target = copy.Open();
                source.CopyTo(target);
            }
        }

        return packed.ToArray();
    }
}
