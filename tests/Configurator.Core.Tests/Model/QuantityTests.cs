using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Tests.Model;

public class QuantityTests
{
    [Theory]
    [InlineData("350 mA", "350")]
    [InlineData("-3 mm", "-3")]
    [InlineData("0.4 ms", "0.4")]
    [InlineData("12.50 EUR", "12.5")]
    [InlineData("007 V", "7")]
    public void A_quantity_is_a_number_a_space_and_a_unit_and_prints_as_written(string written, string value)
    {
        var quantity = QuantityReader.Read(written).Quantity!;
        Assert.Equal(Rational.Parse(value), quantity.Value);
        Assert.Equal(written, quantity.ToString());
    }

    [Theory]
    [InlineData("", nameof(QuantityFault.NoNumber))]
    [InlineData("mA", nameof(QuantityFault.NoNumber))]
    [InlineData(".5 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("5. mm", nameof(QuantityFault.NoNumber))]
    [InlineData("1.2.3 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("4-5 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("+5 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("- 5 mm", nameof(QuantityFault.NoNumber))]
    [InlineData(" 5 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("\u0665 mm", nameof(QuantityFault.NoNumber))]
    [InlineData("5", nameof(QuantityFault.NoUnit))]
    [InlineData("-5.5 ", nameof(QuantityFault.NoUnit))]
    [InlineData("5mm", nameof(QuantityFault.NoSpace))]
    [InlineData("5  mm", nameof(QuantityFault.NoSpace))]
    [InlineData("5\u00A0mm", nameof(QuantityFault.NoSpace))]
    [InlineData("5\tmm", nameof(QuantityFault.NoSpace))]
    [InlineData("5 mm ", nameof(QuantityFault.NoSpace))]
    [InlineData("5,5 mm", nameof(QuantityFault.UnknownUnit))]
    [InlineData("5e3 mm", nameof(QuantityFault.UnknownUnit))]
    [InlineData("5 MM", nameof(QuantityFault.UnknownUnit))]
    [InlineData("5 mm mm", nameof(QuantityFault.UnknownUnit))]
    [InlineData("5 \u2103", nameof(QuantityFault.UnknownUnit))]
    [InlineData("15 AWG", nameof(QuantityFault.UnknownSize))]
    [InlineData("-16 AWG", nameof(QuantityFault.UnknownSize))]
    [InlineData("16.5 AWG", nameof(QuantityFault.UnknownSize))]
    [InlineData("-99999999999 AWG", nameof(QuantityFault.UnknownSize))]
    [InlineData("99999999999999999999 mm", nameof(QuantityFault.TooLarge))]
    [InlineData("-99999999999999999999 AWG", nameof(QuantityFault.TooLarge))]
    [InlineData("0.000000000000000000000001 mm", nameof(QuantityFault.TooLarge))]
    [InlineData("100000001 m", nameof(QuantityFault.TooLarge))]
    public void Anything_else_is_no_quantity_for_a_reason(string written, string fault)
    {
        var read = QuantityReader.Read(written);
        Assert.Null(read.Quantity);
        Assert.Equal(fault, read.Fault.ToString());
    }

    // Source: international yard, 1 in = 25.4 mm.
    [Theory]
    [InlineData("1 in", "cm", "2.54")]
    [InlineData("254 cm", "ft", "8.333333")]
    [InlineData("68 degF", "degC", "20")]
    [InlineData("20 degC", "degF", "68")]
    [InlineData("0 degC", "K", "273.15")]
    [InlineData("16 AWG", "mm2", "1.31")]
    public void A_quantity_can_be_given_in_another_unit(string written, string unit, string value) =>
        Assert.Equal(value, QuantityReader.Read(written).Quantity!.In(UnitTable.Find(unit)!).ToString());

    [Theory]
    [InlineData("1 in", "mA")]
    [InlineData("1 mm2", "AWG")]
    public void A_quantity_cannot_be_given_in_what_does_not_measure_it(string written, string unit) =>
        Assert.Throws<ArgumentException>(() => QuantityReader.Read(written).Quantity!.In(UnitTable.Find(unit)!));
}
