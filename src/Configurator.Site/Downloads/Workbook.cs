using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Configurator.Site.Downloads;

/// <summary>All tables of a configuration as a workbook. Texts stay texts, whatever they begin with; the same tables
/// give the same bytes.</summary>
/// <remarks>Source: ECMA-376 (ISO/IEC 29500), by the library DocumentFormat.OpenXml.</remarks>
internal static class Workbook
{
    private const double WidthMin = 8;
    private const double WidthMax = 48;

    /// <summary>Rows that stay in view and are printed on every page: document control, and the header.</summary>
    private const int HeadRows = 2;

    public static ReadOnlyMemory<byte> Of(DocumentSet set)
    {
        using var bytes = new MemoryStream();
        using (var package = SpreadsheetDocument.Create(bytes, SpreadsheetDocumentType.Workbook))
        {
            var book = package.AddWorkbookPart();
            package.ChangeIdOfPart(book, "rBook");
            book.AddNewPart<WorkbookStylesPart>("rStyles").Stylesheet = WorkbookStyles.Sheet();
            var sheets = Downloads.Sheet.Of(set);
            for (var i = 0; i < sheets.Length; i++)
            {
                Write(book.AddNewPart<WorksheetPart>(IdOf(i)), sheets[i]);
            }

            book.Workbook = new(
                new Sheets(sheets.Select((sheet, i) => EntryOf(sheet, i))),
                new DefinedNames(sheets.Select((sheet, i) => TitlesOf(sheet, i)))
            );
        }

        return SteadyZip.Of(bytes.ToArray());
    }

    private static string IdOf(int sheet) => string.Create(CultureInfo.InvariantCulture, $"rSheet{sheet + 1}");

    private static DocumentFormat.OpenXml.Spreadsheet.Sheet EntryOf(Sheet sheet, int i) =>
        new()
        {
            Name = sheet.Name,
            SheetId = (uint)i + 1,
            Id = IdOf(i),
        };

    private static DefinedName TitlesOf(Sheet sheet, int i) =>
        new(string.Create(CultureInfo.InvariantCulture, $"'{sheet.Name}'!$1:${HeadRows}"))
        {
            Name = "_xlnm.Print_Titles",
            LocalSheetId = (uint)i,
        };

    private static void Write(WorksheetPart part, Sheet sheet)
    {
        ImmutableArray<string> header = [.. sheet.Header];
        ImmutableArray<ImmutableArray<string>> rows = [.. sheet.Rows];
        part.Worksheet = new(
            new SheetProperties(new PageSetupProperties { FitToPage = true }),
            new SheetViews(
                new SheetView(
                    new Pane
                    {
                        VerticalSplit = HeadRows,
                        TopLeftCell = "A3",
                        ActivePane = PaneValues.BottomLeft,
                        State = PaneStateValues.Frozen,
                    }
                )
                {
                    WorkbookViewId = 0,
                }
            ),
            new Columns(header.Select((title, i) => ColumnOf(i, rows.Select(row => row[i]).Prepend(title)))),
            new SheetData([
                RowOf(1, [ControlOf(sheet)], WorkbookStyles.Control),
                RowOf(2, header, WorkbookStyles.Header),
                .. rows.Select((row, i) => RowOf(i + 3, row, WorkbookStyles.Plain)),
            ]),
            new PageMargins
            {
                Left = 0.5,
                Right = 0.5,
                Top = 0.6,
                Bottom = 0.6,
                Header = 0.3,
                Footer = 0.3,
            },
            new PageSetup
            {
                Orientation = OrientationValues.Landscape,
                FitToWidth = 1,
                FitToHeight = 0,
            },
            new HeaderFooter(
                new OddFooter($"&L{ControlOf(sheet).Replace("&", "&&", StringComparison.Ordinal)}&R&P / &N")
            )
        );
    }

    /// <summary>Every sheet says which document it is.</summary>
    private static string ControlOf(Sheet sheet)
    {
        var (words, control) = (sheet.Page.Words, sheet.Page.Control!);
        var approval = control.Approval.Length > 0 ? $", {control.Approval}" : "";
        return $"{control.Number}, {words.Revision} {control.Revision}, {control.State}{approval}, {words.Definitions}: {control.Definitions}. {sheet.Page.Title}";
    }

    private static Column ColumnOf(int index, IEnumerable<string> texts) =>
        new()
        {
            Min = (uint)index + 1,
            Max = (uint)index + 1,
            Width = Math.Clamp(texts.Max(text => text.Length) + 2, WidthMin, WidthMax),
            CustomWidth = true,
        };

    private static Row RowOf(int number, ImmutableArray<string> texts, uint style) =>
        new(texts.Select((text, i) => CellOf(text, number, i, style))) { RowIndex = (uint)number };

    private static Cell CellOf(string text, int row, int column, uint style)
    {
        var cell = new Cell { CellReference = Reference(column, row), StyleIndex = style };
        if (Numbers.IsNumber(text))
        {
            cell.CellValue = new(text);
            return cell;
        }

        cell.DataType = CellValues.InlineString;
        cell.InlineString = new(new Text(XmlText.Of(text)) { Space = SpaceProcessingModeValues.Preserve });
        return cell;
    }

    private static string Reference(int column, int row)
    {
        const int Letters = 26;
        var name = "";
        for (var left = column + 1; left > 0; left = (left - 1) / Letters)
        {
            name = (char)('A' + ((left - 1) % Letters)) + name;
        }

        return name + row.ToString(CultureInfo.InvariantCulture);
    }
}
