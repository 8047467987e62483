using System.Globalization;
using System.Text;

namespace Configurator.Cli.Disk;

/// <summary>A file in a revision.</summary>
/// <param name="Path">From the catalogue's folder; not yet judged.</param>
internal sealed record GitEntry(string Mode, string Id, long Bytes, string Path)
{
    private const string Link = "120000";

    public bool IsLink => Mode == Link;

    public bool IsFile => Mode.StartsWith("100", StringComparison.Ordinal);

    /// <summary>Reads what <c>git ls-tree -r -l -z</c> prints.</summary>
    public static IEnumerable<GitEntry> Read(byte[] listing)
    {
        foreach (var line in Encoding.UTF8.GetString(listing).Split('\0', StringSplitOptions.RemoveEmptyEntries))
        {
            var tab = line.IndexOf('\t', StringComparison.Ordinal);
            var facts = line[..tab].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            _ = long.TryParse(facts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var bytes);
            yield return new(facts[0], facts[2], bytes, line[(tab + 1)..]);
        }
    }
}
