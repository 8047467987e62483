using System.Collections.Immutable;
using System.Text;

namespace Configurator.Benchmarks.Examples;

/// <summary>A table with heads, read as RFC 4180 says: cells in quotes may hold commas, lines and doubled quotes.</summary>
internal sealed record CsvTable(ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows)
{
    public static CsvTable Parse(string text)
    {
        var records = Records(text.TrimStart('\uFEFF')).ToList();
        return records.Count == 0 ? new([], []) : new([.. records[0].Select(head => head.Trim())], [.. records.Skip(1)]);
    }

    /// <summary>The cell below a head; empty where the row is too short or has no such head.</summary>
    public string Cell(ImmutableArray<string> row, string head)
    {
        var column = Heads.IndexOf(head, StringComparer.OrdinalIgnoreCase);
        return column >= 0 && column < row.Length ? row[column].Trim() : "";
    }

    private static IEnumerable<ImmutableArray<string>> Records(string text)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var isQuoted = false;
        for (var at = 0; at < text.Length; at++)
        {
            var character = text[at];
            if (isQuoted)
            {
                if (character != '"')
                {
                    cell.Append(character);
                }
                else if (at + 1 < text.Length && text[at + 1] == '"')
                {
                    cell.Append('"');
                    at++;
                }
                else
                {
                    isQuoted = false;
                }
            }
            else if (character == '"')
            {
                isQuoted = true;
            }
            else if (character is ',' or '\n')
            {
                cells.Add(cell.ToString());
                cell.Clear();
                if (character == '\n')
                {
                    if (cells.Exists(one => one.Length > 0))
                    {
                        yield return [.. cells];
                    }

                    cells.Clear();
                }
            }
            else if (character != '\r')
            {
                cell.Append(character);
            }
        }

        cells.Add(cell.ToString());
        if (cells.Exists(one => one.Length > 0))
        {
            yield return [.. cells];
        }
    }
}
