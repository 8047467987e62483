using System.Globalization;
using System.Text;
using QRCoder;

namespace Configurator.Core.Documents.Blocks;

/// <summary>A QR code as a path of unit squares, for a drawing of that many units a side.</summary>
/// <param name="Text">What a reader of the code sees.</param>
/// <param name="Side">Modules in a row, without the quiet zone.</param>
/// <remarks>Source: ISO/IEC 18004, by the library QRCoder; error correction M.</remarks>
public sealed record QrCode(string Text, int Side, string Path)
{
    /// <summary>Clear modules around a code. Source: ISO/IEC 18004, 4 on each side (from memory).</summary>
    public const int Quiet = 4;

    /// <summary>The code with its quiet zone.</summary>
    public string ViewBox =>
        string.Create(CultureInfo.InvariantCulture, $"{-Quiet} {-Quiet} {Side + (2 * Quiet)} {Side + (2 * Quiet)}");

    /// <summary>A path that fills all of it.</summary>
    public string Ground =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"M{-Quiet} {-Quiet}h{Side + (2 * Quiet)}v{Side + (2 * Quiet)}h-{Side + (2 * Quiet)}z"
        );

    public static QrCode Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var side = data.ModuleMatrix.Count - (2 * Quiet);
        var path = new StringBuilder();
        for (var row = 0; row < side; row++)
        {
            for (var column = 0; column < side; column++)
            {
                var length = Run(data.ModuleMatrix[row + Quiet], column, side);
                if (length > 0)
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{column} {row}h{length}v1h-{length}z");
                    column += length;
                }
            }
        }

        return new(text, side, path.ToString());
    }

    private static int Run(System.Collections.BitArray modules, int column, int side)
    {
        var length = 0;
        while (column + length < side && modules[column + length + Quiet])
        {
            length++;
        }

        return length;
    }
}
