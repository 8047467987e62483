using System.Collections.Immutable;
using System.Text;
using Configurator.Cli.Disk;

using FilesByPath = System.Collections.Generic.IReadOnlyDictionary<string, System.ReadOnlyMemory<byte>>;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Two small sites that differ in every way two sites can: a page changed, one gone, one come.</summary>
internal static class SampleSites
{
    public static FilesByPath Old { get; } = Of(
        ("index.html", "<p>old"), ("assets/site.css", "p{}"), ("machines/sorter-s2/ports.html", "<p>eight ports"));

    public static FilesByPath New { get; } = Of(
        ("index.html", "<p>new"), ("assets/site.css", "p{}"), ("machines/sorter-s3/ports.html", "<p>nine ports"));

    /// <summary>One page of it is longer than 1 KiB.</summary>
    public static FilesByPath Large { get; } =
        Of(("index.html", "<p>large"), ("pages/all.html", new string('x', 5000)));

    public static FilesByPath Of(params (string Path, string Text)[] files) =>
        files.Append((Path: SiteMarker.FileName, Text: """{"tool": "configurator", "version": "0.1.0"}"""))
            .ToImmutableSortedDictionary(
                file => file.Path,
                file => (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(file.Text),
                StringComparer.Ordinal);
}
