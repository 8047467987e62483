using System.Collections.Immutable;

namespace Configurator.Core.Sources;

/// <summary>One file of the catalogue as it lay on disk: its bytes, not yet trusted to be text.</summary>
/// <param name="Path">Relative to the catalogue's folder, with forward slashes.</param>
public sealed record SourceFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>Something in the catalogue's folders that is not read: a link, a pipe, a file beyond the limits.</summary>
public sealed record RefusedFile(string Path, string Why, string Fix);

/// <summary>All files of a catalogue, in ordinal order of their paths, and what was refused while gathering
/// them.</summary>
public sealed record SourceSet(ImmutableArray<SourceFile> Files, ImmutableArray<RefusedFile> Refused)
{
    public static SourceSet Of(IEnumerable<SourceFile> files, IEnumerable<RefusedFile>? refused = null) =>
        new(
            [.. files.OrderBy(file => file.Path, StringComparer.Ordinal)],
            [.. (refused ?? []).OrderBy(file => file.Path, StringComparer.Ordinal)]
        );

    /// <summary>The first of each path.</summary>
    public IReadOnlyDictionary<string, SourceFile> ByPath() =>
        Files
            .DistinctBy(file => file.Path, StringComparer.Ordinal)
            .ToDictionary(file => file.Path, StringComparer.Ordinal);
}
