using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding.Shapes;

/// <summary>What became of a text that should be a quantity: the quantity, or what is wrong with which part of
/// it.</summary>
internal sealed record QuantityText(Quantity? Quantity, QuantityFault Fault, string Number, string Unit);

internal enum QuantityFault
{
    None,
    NoNumber,
    NoUnit,
    NoSpace,
    UnknownUnit,
    UnknownSize,
    TooLarge,
}

/// <summary>Reads <c>VALUE UNIT</c> with one space between: <c>350 mA</c>.</summary>
internal static class QuantityReader
{
    /// <summary>Digits, sign and point of a number: longer ones are no measurement, and slow to calculate
    /// with.</summary>
    private const int NumberLengthMax = 24;

    /// <summary>In base units, a hundred thousand kilometres or three years: beyond any machine, and sums stay in
    /// range.</summary>
    private static readonly Rational Largest = 100_000_000_000;

    /// <summary>A bare number; null for anything else.</summary>
    public static Rational? Number(string text) => text.Length <= NumberLengthMax ? Rational.Parse(text) : null;

    public static QuantityText Read(string text)
    {
        var numberLength = 0;
        while (
            numberLength < text.Length && (char.IsAsciiDigit(text[numberLength]) || text[numberLength] is '-' or '.')
        )
        {
            numberLength++;
        }

        var number = text[..numberLength];
        var symbol = text[numberLength..].Trim();
        if (number.Length > NumberLengthMax)
        {
            return new(null, QuantityFault.TooLarge, number, symbol);
        }

        if (Rational.Parse(number) is not { } value)
        {
            return new(null, QuantityFault.NoNumber, number, symbol);
        }

        return symbol.Length == 0 ? new(null, QuantityFault.NoUnit, number, "") : WithUnit(text, value, number, symbol);
    }

    private static QuantityText WithUnit(string text, Rational value, string number, string symbol)
    {
        if (UnitTable.Find(symbol) is not { } unit)
        {
            return new(null, QuantityFault.UnknownUnit, number, symbol);
        }

        if (text != $"{number} {symbol}")
        {
            return new(null, QuantityFault.NoSpace, number, symbol);
        }

        if (value > Largest || value < -Largest)
        {
            return new(null, QuantityFault.TooLarge, number, symbol);
        }

        if ((value < 0 && symbol == "AWG") || UnitTable.InBase(value, unit) is not { } inBase)
        {
            return new(null, QuantityFault.UnknownSize, number, symbol);
        }

        return inBase > Largest || inBase < -Largest
            ? new(null, QuantityFault.TooLarge, number, symbol)
            : new(new(value, unit, inBase, text), QuantityFault.None, number, symbol);
    }
}
