using System.Collections.Immutable;
using System.Text;
using Configurator.Site.Downloads;

namespace Configurator.Site.Inspecting;

/// <summary>Reads comma-separated values after RFC 4180.</summary>
internal static class CsvTable
{
    public static CellGrid Read(string text)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        var row = ImmutableArray.CreateBuilder<string>();
        var at = 0;
        while (at < text.Length)
        {
            row.Add(CsvText.Read(Field(text, ref at)));
            if (at >= text.Length || text[at] == '\n')
            {
                rows.Add(row.ToImmutable());
                row.Clear();
            }

            at++;
        }

        return new(rows.ToImmutable());
    }

    /// <summary>One field; afterwards <paramref name="at"/> is at the comma or the end of the line.</summary>
    private static string Field(string text, ref int at)
    {
        if (at < text.Length && text[at] == '"')
        {
            return Quoted(text, ref at);
        }

        var start = at;
        while (at < text.Length && text[at] is not (',' or '\n'))
        {
            at++;
        }

        return text[start..at];
    }

    private static string Quoted(string text, ref int at)
    {
        var field = new StringBuilder();
        for (at++; at < text.Length; at++)
        {
            if (text[at] == '"' && (at + 1 >= text.Length || text[at + 1] != '"'))
            {
                at++;
                break;
            }

            at += text[at] == '"' ? 1 : 0;
            field.Append(text[at]);
        }

        return field.ToString();
    }
}
