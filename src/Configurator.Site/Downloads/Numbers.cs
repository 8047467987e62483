using System.Globalization;

namespace Configurator.Site.Downloads;

/// <summary>Which cells a spreadsheet may calculate with.</summary>
internal static class Numbers
{
    /// <summary>Digits that survive in a double.</summary>
    private const int DigitsMax = 15;

    /// <summary>A plain decimal number that a spreadsheet gives back as it was written.</summary>
    public static bool IsNumber(string text) =>
        text.Length is > 0 and <= DigitsMax
        && decimal.TryParse(
            text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var value
        )
        && value.ToString(CultureInfo.InvariantCulture) == text;
}
