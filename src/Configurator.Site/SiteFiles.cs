using System.Collections.Immutable;

namespace Configurator.Site;

/// <summary>The files of a site in memory, by path from its root, in ordinal order.</summary>
public sealed record SiteFiles(ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Files)
{
    public static SiteFiles Empty { get; } =
        new(ImmutableSortedDictionary.Create<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal));

    /// <summary>Two files of one path are a mistake of ours and throw.</summary>
    public static SiteFiles Of(IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> files) => Empty.With(files);

    /// <summary>These files and further ones; a path that is already taken throws.</summary>
    public SiteFiles With(IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> files)
    {
        var all = Files.ToBuilder();
        foreach (var (path, bytes) in files)
        {
            all.Add(path, bytes);
        }

        return new(all.ToImmutable());
    }
}
