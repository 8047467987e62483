using System.Text;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Site.Downloads;

/// <summary>A table as comma-separated values: UTF-8, LF, every field that needs it in quotes.</summary>
/// <remarks>Source: RFC 4180, with LF for its line ends. A field that a spreadsheet would take for a formula, or
/// that begins with an apostrophe, gets an apostrophe before it, after OWASP's advice on CSV injection;
/// <see cref="Read"/> takes it away again.</remarks>
public static class CsvText
{
    private const string Starters = "=+-@\t\r'";

    public static string Of(Table table)
    {
        var text = new StringBuilder();
        Append(text, table.Columns.Select(column => column.Title));
        foreach (var row in table.Rows)
        {
            Append(text, row.Cells.Select(cell => cell.Text));
        }

        return text.ToString();
    }

    /// <summary>A field as it was before it was guarded.</summary>
    public static string Read(string field) =>
        field.Length > 1 && field[0] == '\'' && Starters.Contains(field[1], StringComparison.Ordinal)
            ? field[1..]
            : field;

    private static void Append(StringBuilder text, IEnumerable<string> fields) =>
        text.AppendJoin(',', fields.Select(Guarded).Select(Quoted)).Append('\n');

    private static string Guarded(string field) =>
        field.Length > 0 && Starters.Contains(field[0], StringComparison.Ordinal) && !Numbers.IsNumber(field)
            ? "'" + field
            : field;

    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny(",\"\n\r") >= 0 ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : field;
}
