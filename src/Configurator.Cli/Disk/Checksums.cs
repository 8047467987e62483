using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace Configurator.Cli.Disk;

/// <summary>
/// The site's list of files and their SHA-256, in the form that <c>sha256sum -c</c> reads. It is written last, so that
/// a folder which has it was once whole; it does not list itself.
/// </summary>
internal sealed record Checksums(ImmutableSortedDictionary<string, string> ByPath)
{
    public const string FileName = "SHA256SUMS";
    private const int HexLength = 64;
    private const int BytesMax = 64 << 20;
    private const string Gap = "  ";

    public static Checksums Of(IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> files) =>
        new(files.ToImmutableSortedDictionary(file => file.Key, file => Hex(file.Value.Span), StringComparer.Ordinal));

    /// <summary>The list a folder carries; null where there is none, or none that we wrote.</summary>
    public static Checksums? In(string folder)
    {
        var path = Path.Combine(folder, FileName);
        return FileKinds.Of(path) == FileKind.Regular && new FileInfo(path).Length is > 0 and <= BytesMax
            ? Parse(File.ReadAllText(path))
            : null;
    }

    public byte[] ToBytes() =>
        Encoding.ASCII.GetBytes(string.Concat(ByPath.Select(file => $"{file.Value}{Gap}{file.Key}\n")));

    /// <summary>Whether the file's bytes on disk are the listed ones.</summary>
    public bool Matches(string folder, string path)
    {
        using var stream = File.OpenRead(Path.Combine(folder, path));
        return Convert.ToHexStringLower(SHA256.HashData(stream)) == ByPath[path];
    }

    internal static Checksums? Parse(string text)
    {
        var byPath = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var line in text.Split('\n').SkipLast(1))
        {
            if (!IsEntry(line) || !byPath.TryAdd(line[(HexLength + Gap.Length)..], line[..HexLength]))
            {
                return null;
            }
        }

        return text.EndsWith('\n') ? new(byPath.ToImmutable()) : null;
    }

    private static bool IsEntry(string line) =>
        line.Length > HexLength + Gap.Length
        && line.Take(HexLength).All(char.IsAsciiHexDigitLower)
        && line.AsSpan(HexLength, Gap.Length).SequenceEqual(Gap)
        && SiteNames.IsFit(line[(HexLength + Gap.Length)..]);

    private static string Hex(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
