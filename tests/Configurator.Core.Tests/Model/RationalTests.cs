using System.Globalization;
using System.Numerics;
using Configurator.Core.Model.Units;
using CsCheck;

namespace Configurator.Core.Tests.Model;

/// <summary>The laws of fractions, and how they are read and printed.</summary>
public class RationalTests
{
    private static readonly Gen<Rational> Any =
        Gen.Select(Gen.Long, Gen.Long[1, long.MaxValue], Gen.Bool, (n, d, small) => small ? new Rational(n % 50, 1 + (d % 50)) : new Rational(n, d));

    [Fact]
    public void Addition_and_multiplication_commute_and_associate() => Gen.Select(Any, Any, Any).Sample((a, b, c) =>
        a + b == b + a && a * b == b * a && a + b + c == a + (b + c) && a * b * c == a * (b * c));

    [Fact]
    public void Multiplication_distributes_over_addition() => Gen.Select(Any, Any, Any).Sample((a, b, c) => a * (b + c) == (a * b) + (a * c));

    [Fact]
    public void What_is_added_can_be_taken_away_and_what_is_multiplied_divided() => Gen.Select(Any, Any).Sample((a, b) =>
        a + b - b == a && a - a == 0 && a + 0 == a && a * 1 == a && (b == 0 || a * b / b == a));

    [Fact]
    public void Order_is_that_of_the_difference() => Gen.Select(Any, Any).Sample((a, b) =>
        a.CompareTo(b) == (a - b).Numerator.Sign && a < b == b > a && a <= b == !(a > b) && a >= b == !(a < b) && a == b == a.Equals(b));

    [Fact]
    public void Every_fraction_is_in_lowest_terms_with_a_positive_denominator() => Gen.Select(Any, Any).Sample((a, b) =>
        (a * b).Denominator > 0 && BigInteger.GreatestCommonDivisor((a + b).Numerator, (a + b).Denominator) == 1);

    [Fact]
    public void Equal_fractions_have_the_same_hash() => Gen.Select(Any, Gen.Int[1, 1000]).Sample((a, factor) =>
    {
        var same = new Rational(a.Numerator * -factor, a.Denominator * -factor);
        return same == a && same.GetHashCode() == a.GetHashCode();
    });

    [Fact]
    public void The_ceiling_is_the_smallest_whole_number_not_below() => Any.Sample(a =>
        new Rational(a.Ceiling(), 1) >= a && new Rational(a.Ceiling() - 1, 1) < a);

    [Fact]
    public void What_is_not_set_is_zero() => Assert.Equal(0, default(Rational));

    [Fact]
    public void Nothing_is_divided_by_zero() => Assert.Throws<DivideByZeroException>(() => Rational.Parse("1")!.Value / 0);

    [Fact]
    public void A_decimal_is_read_as_it_is_printed() => Gen.Select(Gen.Long, Gen.Int[0, 9]).Sample((digits, places) =>
    {
        var value = new Rational(digits, BigInteger.Pow(10, places));
        return Rational.Parse(value.ToString(places)) == value;
    });

    [Theory]
    [InlineData("12.50", 25, 2)]
    [InlineData("-0.125", -1, 8)]
    [InlineData("-0", 0, 1)]
    [InlineData("007", 7, 1)]
    public void Digits_with_a_sign_and_a_point_are_read_exactly(string text, long numerator, long denominator) =>
        Assert.Equal(new Rational(numerator, denominator), Rational.Parse(text));

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData(".5")]
    [InlineData("5.")]
    [InlineData("+1")]
    [InlineData("--1")]
    [InlineData("1-")]
    [InlineData("1e3")]
    [InlineData("1,5")]
    [InlineData("1_000")]
    [InlineData(" 1")]
    [InlineData("1.2.3")]
    [InlineData("\u0661")]
    [InlineData("0x10")]
    public void Nothing_else_is_a_number(string text) => Assert.Null(Rational.Parse(text));

    // Rounded by hand: half away from zero.
    [Theory]
    [InlineData(1, 2, 0, "1")]
    [InlineData(-1, 2, 0, "-1")]
    [InlineData(5, 2, 0, "3")]
    [InlineData(1, 3, 6, "0.333333")]
    [InlineData(2, 3, 6, "0.666667")]
    [InlineData(1, 8, 2, "0.13")]
    [InlineData(-1, 8, 2, "-0.13")]
    [InlineData(1249, 10000, 2, "0.12")]
    [InlineData(-1, 1000, 2, "0")]
    [InlineData(1, 200, 2, "0.01")]
    [InlineData(999, 1000, 2, "1")]
    [InlineData(1200, 1, 3, "1200")]
    [InlineData(100, 1, 0, "100")]
    [InlineData(5, 4, 3, "1.25")]
    public void Numbers_are_printed_without_trailing_zeros(long numerator, long denominator, int decimals, string printed) =>
        Assert.Equal(printed, new Rational(numerator, denominator).ToString(decimals));

    // Second algorithm: System.Decimal's own rounding.
    [Fact]
    public void Printing_rounds_as_decimal_arithmetic_does() => Gen.Select(Gen.Int, Gen.Int[0, 4]).Sample((thousandths, decimals) =>
        new Rational(thousandths, 1000).ToString(decimals)
            == Math.Round(thousandths / 1000m, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture));
}
