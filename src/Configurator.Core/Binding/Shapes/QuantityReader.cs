using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding.Shapes;

/// <summary>What became of a text that should be a quantity: the quantity, or what is wrong with which part of it.</summary>
internal sealed record QuantityText(Quantity? Quantity, QuantityFault Fault, string Number, string Unit);

internal enum QuantityFault
{
    None,
    NoNumber,
    NoUnit,
    NoSpace,
    UnknownUnit,
    UnknownSize,
}

/// <summary>Reads <c>VALUE UNIT</c> with one space between: <c>350 mA</c>.</summary>
internal static class QuantityReader
{
    public static QuantityText Read(string text)
    {
        var numberLength = 0;
        while (numberLength < text.Length && (char.IsAsciiDigit(text[numberLength]) || text[numberLength] is '-' or '.'))
        {
            numberLength++;
        }

        var number = text[..numberLength];
        var symbol = text[numberLength..].Trim();
        if (Rational.Parse(number) is not { } value)
        {
            return new(null, QuantityFault.NoNumber, number, symbol);
        }

        return symbol.Length == 0
            ? new(null, QuantityFault.NoUnit, number, "")
            : WithUnit(text, value, number, symbol);
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

        return UnitTable.InBase(value, unit) is { } inBase
            ? new(new(value, unit, inBase, text), QuantityFault.None, number, symbol)
            : new(null, QuantityFault.UnknownSize, number, symbol);
    }
}
