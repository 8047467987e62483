using System.Globalization;
using Configurator.Site.Downloads;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using ExcelDataReader;

namespace Configurator.Site.Tests.Downloads;

public class WorkbookTests
{
    // Source: the validator of the Open XML SDK, ECMA-376 schemas.
    [Fact]
    public void A_workbook_is_valid_open_xml()
    {
        using var package = SpreadsheetDocument.Open(new MemoryStream(Published.File(Published.Set.Workbook).ToArray()), isEditable: false);
        Assert.Empty(new OpenXmlValidator().Validate(package, TestContext.Current.CancellationToken).Select(fault => $"{fault.Path?.XPath}: {fault.Description}"));
    }

    // Source: ExcelDataReader 3.6.0, an independent reader of workbooks.
    [Fact]
    public void Another_reader_finds_every_cell_of_every_sheet()
    {
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(Published.File(Published.Set.Workbook).ToArray()));
        foreach (var sheet in Sheet.Of(Published.Set))
        {
            Assert.Equal(sheet.Name, reader.Name);
            Assert.True(reader.Read());
            Assert.StartsWith(sheet.Page.Control!.Number, reader.GetString(0), StringComparison.Ordinal);
            foreach (var row in sheet.Rows.Prepend([.. sheet.Header]))
            {
                Assert.True(reader.Read());
                Assert.Equal(row, row.Select((_, i) => Text(reader.GetValue(i))));
            }

            Assert.False(reader.Read());
            reader.NextResult();
        }
    }

    [Fact]
    public void A_text_that_begins_like_a_formula_stays_a_text()
    {
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(Published.File(Published.Set.Workbook).ToArray()));
        var texts = new List<object>();
        do
        {
            while (reader.Read())
            {
                texts.AddRange(Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue).OfType<object>());
            }
        }
        while (reader.NextResult());
        Assert.Contains(texts, text => text is string formula && formula.StartsWith("=cmd|' /C calc'!A1, \"quoted\"", StringComparison.Ordinal));
        Assert.DoesNotContain("<f>", Xml(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes() => Assert.True(
        Workbook.Of(Published.Set).Span.SequenceEqual(Published.File(Published.Set.Workbook).Span));

    [Fact]
    public void The_header_stays_in_view_and_is_printed_on_every_page()
    {
        using var package = SpreadsheetDocument.Open(new MemoryStream(Published.File(Published.Set.Workbook).ToArray()), isEditable: false);
        var sheets = package.WorkbookPart!.WorksheetParts.ToList();
        Assert.All(sheets, sheet => Assert.Contains("state=\"frozen\"", sheet.Worksheet!.OuterXml, StringComparison.Ordinal));
        Assert.Equal(sheets.Count, package.WorkbookPart.Workbook!.DefinedNames!.Count());
    }

    private static string Xml()
    {
        using var package = SpreadsheetDocument.Open(new MemoryStream(Published.File(Published.Set.Workbook).ToArray()), isEditable: false);
        return string.Concat(package.WorkbookPart!.WorksheetParts.Select(part => part.Worksheet!.OuterXml));
    }

    private static string Text(object? value) => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
}
