using System.Text.RegularExpressions;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Tests.Support;
using ZXing;
using ZXing.Common;

namespace Configurator.Core.Tests.Documents;

/// <summary>Codes on labels, read back by another library.</summary>
public class LabelTests
{
    private const int Scale = 4;

    // Source: ZXing.Net 0.16.11, an independent reader of ISO/IEC 18004.
    [Fact]
    public void A_code_reads_as_the_address_of_the_row_of_its_cable()
    {
        var set = DemoCatalogue.Documents.Sets[0];
        var labels = set.Pages.SelectMany(page => page.Sections).SelectMany(part => part.Blocks).OfType<LabelSheet>().Single().Labels;
        var rows = set.Find("cable-schedule")!.Rows.ToDictionary(row => row.Cells[0].Text, row => row.Id);
        Assert.All(labels.Where((_, i) => i % 8 == 0), label => Assert.Equal(
            $"https://machines.example/{set.Folder}cables.html#{rows[label.Name]}", Read(label.Code!)));
    }

    [Theory]
    [InlineData("x")]
    [InlineData("https://docs.example.org/machines/p4/configurations/classic-yoghurt/cables.html#cable-lidmark-wg1")]
    public void Any_address_can_be_read_back(string text) => Assert.Equal(text, Read(new QrCode(text)));

    private static string Read(QrCode code)
    {
        var side = (code.Side + (2 * QrCode.Quiet)) * Scale;
        var pixels = Enumerable.Repeat((byte)255, side * side).ToArray();
        foreach (Match run in Regex.Matches(code.Path, @"M(?<x>\d+) (?<y>\d+)h(?<length>\d+)v1h-\d+z", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)))
        {
            var (x, y, length) = (Number(run, "x"), Number(run, "y"), Number(run, "length"));
            for (var row = 0; row < Scale; row++)
            {
                pixels.AsSpan(
                    ((((y + QrCode.Quiet) * Scale) + row) * side) + ((x + QrCode.Quiet) * Scale), length * Scale).Clear();
            }
        }

        var source = new RGBLuminanceSource(pixels, side, side, RGBLuminanceSource.BitmapFormat.Gray8);
        return new MultiFormatReader().decode(new(new HybridBinarizer(source)))!.Text;
    }

    private static int Number(Match run, string group) => int.Parse(run.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);
}
