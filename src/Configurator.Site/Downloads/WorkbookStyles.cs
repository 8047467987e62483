using DocumentFormat.OpenXml.Spreadsheet;

namespace Configurator.Site.Downloads;

/// <summary>The few styles of a workbook.</summary>
internal static class WorkbookStyles
{
    /// <summary>A text that stays one when it is edited.</summary>
    public const uint Plain = 1;
    public const uint Header = 2;
    public const uint Control = 3;

    public static Stylesheet Sheet() =>
        new(
            new Fonts(
                new Font(new FontSize { Val = 10 }, new FontName { Val = "Calibri" }),
                new Font(new Bold(), new FontSize { Val = 10 }, new FontName { Val = "Calibri" })
            ),
            new Fills(
                new Fill(new PatternFill { PatternType = PatternValues.None }),
                new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
                new Fill(
                    new PatternFill(new ForegroundColor { Rgb = "FFE6EAE9" }) { PatternType = PatternValues.Solid }
                )
            ),
            new Borders(
                new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder(), new DiagonalBorder()),
                new Border(
                    new LeftBorder(),
                    new RightBorder(),
                    new TopBorder(),
                    new BottomBorder { Style = BorderStyleValues.Hair },
                    new DiagonalBorder()
                )
            ),
            new CellStyleFormats(new CellFormat()),
            new CellFormats(
                new CellFormat(),
                Format(font: 0, fill: 0, border: 1, wraps: true),
                Format(font: 1, fill: 2, border: 1, wraps: true),
                Format(font: 1, fill: 0, border: 0, wraps: false)
            )
        );

    private static CellFormat Format(uint font, uint fill, uint border, bool wraps) =>
        new(new Alignment { Vertical = VerticalAlignmentValues.Top, WrapText = wraps })
        {
            FontId = font,
            FillId = fill,
            BorderId = border,
            QuotePrefix = true,
            ApplyAlignment = true,
            ApplyFont = true,
            ApplyFill = true,
            ApplyBorder = true,
        };
}
