using System.Globalization;
using System.Text;
using Configurator.Core.Documents.Blocks;
using Configurator.Site.Downloads;
using Configurator.Site.Inspecting;
using CsCheck;
using CsvHelper;
using CsvHelper.Configuration;

namespace Configurator.Site.Tests.Downloads;

public class CsvTests
{
    private static readonly Gen<string> Cells = Gen.String[Gen.Char["=+-@'\",;\n\r\t ab1½"], 0, 12];

    private static readonly CsvConfiguration Rfc4180 = new(CultureInfo.InvariantCulture)
    {
        HasHeaderRecord = false,
        NewLine = "\n",
        IgnoreBlankLines = false,
    };

    // Source: CsvHelper 33, an independent reader of RFC 4180.
    [Fact]
    public void Another_reader_finds_what_was_written() => Tables().Sample(table =>
    {
        using var reader = new CsvReader(new StringReader(CsvText.Of(table)), Rfc4180);
        var rows = new List<string[]>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.Parser.Count).Select(i => CsvText.Read(reader.GetField(i)!))]);
        }

        return rows.Skip(1).Select(row => string.Join('|', row)).SequenceEqual(
            table.Rows.Select(row => string.Join('|', row.Cells.Select(cell => cell.Text))));
    });

    [Fact]
    public void Our_own_reader_finds_it_too() => Tables().Sample(table =>
        CellGrid.Of(table).DifferenceFrom(CsvTable.Read(CsvText.Of(table))) is null);

    // Source: OWASP on CSV injection: =, +, - and @ start formulas. A plain number is none.
    [Theory]
    [InlineData("=FRONT-KF1", "'=FRONT-KF1")]
    [InlineData("+INFEED", "'+INFEED")]
    [InlineData("-4.5", "-4.5")]
    [InlineData("-", "'-")]
    [InlineData("6 m", "6 m")]
    public void A_field_that_a_spreadsheet_would_calculate_is_guarded(string cell, string written) =>
        Assert.Equal($"a\n{written}\n", CsvText.Of(new("t", "t", [new("a")], [Row.Of(cell)])));

    [Fact]
    public void Files_are_utf_8_with_lf() => Assert.All(
        Published.Site.Files.Where(file => file.Key.EndsWith(".csv", StringComparison.Ordinal)),
        file => Assert.DoesNotContain('\r', new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file.Value.Span)));

    private static Gen<Table> Tables() => Cells.Array[3].Array[1, 5].Select(rows =>
        new Table("t", "t", [new("a"), new("b"), new("c")], [.. rows.Select(row => Row.Of([.. row.Select(text => (Cell)text)]))]));
}
