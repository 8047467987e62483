using System.Collections.Immutable;

namespace Configurator.Core.Tests.Support;

/// <summary>Published values in <c>tests/Data</c>; its page says where each file comes from.</summary>
internal static class CheckData
{
    /// <summary>The rows below the heads, each by its heads.</summary>
    public static ImmutableArray<ImmutableDictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Folder, "tests", "Data", file));
        var heads = Cells(lines[0]).ToList();
        return [.. lines.Skip(1).Select(line => heads.Zip(Cells(line)).ToImmutableDictionary(cell => cell.First, cell => cell.Second))];
    }

    /// <summary>A cell with a comma in it stands in quotes; none has a quote in it.</summary>
    private static IEnumerable<string> Cells(string line)
    {
        var pieces = line.Split('"');
        var isQuoted = false;
        var cell = "";
        foreach (var piece in pieces)
        {
            var parts = isQuoted ? [piece] : piece.Split(',');
            cell += parts[0];
            foreach (var part in parts.Skip(1))
            {
                yield return cell;
                cell = part;
            }

            isQuoted = !isQuoted;
        }

        yield return cell;
    }
}
