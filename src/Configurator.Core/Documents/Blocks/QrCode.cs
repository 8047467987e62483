using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Configurator.Core.Documents.Blocks;

/// <summary>A QR code as a path of unit squares, for a drawing of that many units a side. It is worked out when it is
/// drawn.</summary>
/// <param name="Text">What a reader of the code sees.</param>
/// <remarks>Source: ISO/IEC 18004, by the library QRCoder; error correction M.</remarks>
public sealed record QrCode(string Text)
{
    /// <summary>Clear modules around a code. Source: ISO/IEC 18004, 4 on each side (from memory).</summary>
    public const int Quiet = 4;

    private readonly Lazy<(int Side, string Path)> _drawn = new(() => Draw(Text));

    /// <summary>Modules in a row, without the quiet zone.</summary>
    public int Side => _drawn.Value.Side;

    public string Path => _drawn.Value.Path;

    /// <summary>The code with its quiet zone.</summary>
    public string ViewBox =>
        string.Create(CultureInfo.InvariantCulture, $"{-Quiet} {-Quiet} {Side + (2 * Quiet)} {Side + (2 * Quiet)}");

    /// <summary>A path that fills all of it.</summary>
    public string Ground =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"M{-Quiet} {-Quiet}h{Side + (2 * Quiet)}v{Side + (2 * Quiet)}h-{Side + (2 * Quiet)}z"
        );

    private static (int Side, string Path) Draw(string text)
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

        return (side, path.ToString());
    }

    private static int Run(BitArray modules, int column, int side)
    {
        var length = 0;
        while (column + length < side && modules[column + length + Quiet])
        {
            length++;
        }

        return length;
    }
}
