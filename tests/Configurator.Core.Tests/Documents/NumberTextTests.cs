using Configurator.Core.Documents.Picking;

namespace Configurator.Core.Tests.Documents;

/// <summary>Whole numbers as the order page reads them.</summary>
public class NumberTextTests
{
    // Source: worked by hand. Letters of RFC 4648, section 5: A is 0, f is 31, g is 32 (nothing, and more follow).
    // 33 is 1 and 1 times 32: 32 + 1 is h, then B. 1000 is 8 and 31 times 32: 32 + 8 is o, then f.
    [Theory]
    [InlineData(0u, "A")]
    [InlineData(31u, "f")]
    [InlineData(32u, "gB")]
    [InlineData(33u, "hB")]
    [InlineData(1000u, "of")]
    [InlineData(uint.MaxValue, "______D")]
    public void A_number_is_written_five_bits_a_letter_lowest_first(uint number, string written)
    {
        var text = new NumberText();
        text.Add(number);

        Assert.Equal(written, text.ToString());
    }

    // Source: worked by hand. Value 0 is bit 0 of the low half, value 32 bit 0 of the high half.
    [Fact]
    public void A_set_of_values_is_written_in_two_halves()
    {
        var text = new NumberText();
        text.AddSet(1UL | 1UL << 32);

        Assert.Equal("BB", text.ToString());
    }
}
