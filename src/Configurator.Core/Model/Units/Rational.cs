using System.Globalization;
using System.Numerics;

namespace Configurator.Core.Model.Units;

/// <summary>An exact fraction in lowest terms with a positive denominator; what definitions say is compared
/// exactly.</summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly BigInteger _denominatorLessOne;

    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException();
        }

        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        Numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    public BigInteger Numerator { get; }

    public BigInteger Denominator => _denominatorLessOne + 1;

    public static implicit operator Rational(long value) => new(value, 1);

    public static Rational operator +(Rational left, Rational right) =>
        new(
            (left.Numerator * right.Denominator) + (right.Numerator * left.Denominator),
            left.Denominator * right.Denominator
        );

    public static Rational operator -(Rational left, Rational right) => left + (-right);

    public static Rational operator -(Rational value) => new(-value.Numerator, value.Denominator);

    public static Rational operator *(Rational left, Rational right) =>
        new(left.Numerator * right.Numerator, left.Denominator * right.Denominator);

    public static Rational operator /(Rational left, Rational right) =>
        new(left.Numerator * right.Denominator, left.Denominator * right.Numerator);

    public static bool operator ==(Rational left, Rational right) => left.Equals(right);

    public static bool operator !=(Rational left, Rational right) => !left.Equals(right);

    public static bool operator <(Rational left, Rational right) => left.CompareTo(right) < 0;

    public static bool operator >(Rational left, Rational right) => left.CompareTo(right) > 0;

    public static bool operator <=(Rational left, Rational right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Rational left, Rational right) => left.CompareTo(right) >= 0;

    /// <summary>The same value: every decimal is a fraction.</summary>
    public static Rational Of(decimal value)
    {
        Span<int> bits = stackalloc int[4];
        decimal.GetBits(value, bits);
        var digits = (Part(bits[2]) << 64) | (Part(bits[1]) << 32) | Part(bits[0]);
        return new(bits[3] < 0 ? -digits : digits, BigInteger.Pow(10, (bits[3] >> 16) & 0xFF));

        static BigInteger Part(int bits) => unchecked((uint)bits);
    }

    /// <summary>Reads digits with an optional sign and one decimal point (<c>-12.50</c>); null for anything
    /// else.</summary>
    public static Rational? Parse(string text)
    {
        var digits = text.StartsWith('-') ? text.AsSpan(1) : text;
        var point = digits.IndexOf('.');
        var whole = point < 0 ? digits : digits[..point];
        var fraction = point < 0 ? [] : digits[(point + 1)..];
        if (whole.IsEmpty || (point >= 0 && fraction.IsEmpty) || !AllDigits(whole) || !AllDigits(fraction))
        {
            return null;
        }

        var value = BigInteger.Parse(string.Concat(whole, fraction), CultureInfo.InvariantCulture);
        return new(text.StartsWith('-') ? -value : value, BigInteger.Pow(10, fraction.Length));
    }

    /// <summary>The nearest whole number that is not smaller.</summary>
    public BigInteger Ceiling() =>
        BigInteger.Divide(Numerator - BigMod(Numerator, Denominator), Denominator)
        + (BigMod(Numerator, Denominator).IsZero ? 0 : 1);

    /// <summary>The square root, rounded down to so many decimals: never above the true one.</summary>
    /// <exception cref="InvalidOperationException">The value is negative.</exception>
    public Rational RootDown(int decimals)
    {
        if (Numerator.Sign < 0)
        {
            throw new InvalidOperationException($"{this} has no root");
        }

        var scale = BigInteger.Pow(10, decimals);
        return new(RootDown(Numerator * scale * scale / Denominator), scale);
    }

    /// <summary>The nearest floating-point number, for formulas that no fraction can follow.</summary>
    public double ToDouble() => double.Parse(ToString(decimals: 17), CultureInfo.InvariantCulture);

    /// <summary>In decimal digits without trailing zeros, rounded half away from zero.</summary>
    /// <param name="decimals">At most so many digits after the point.</param>
    public string ToString(int decimals)
    {
        var scale = BigInteger.Pow(10, decimals);
        var doubled = BigInteger.Abs(Numerator) * scale * 2;
        var scaled = (doubled + Denominator) / (Denominator * 2);
        var digits = scaled.ToString(CultureInfo.InvariantCulture).PadLeft(decimals + 1, '0');
        var text = decimals == 0 ? digits : $"{digits[..^decimals]}.{digits[^decimals..]}".TrimEnd('0').TrimEnd('.');
        return Numerator.Sign < 0 && !scaled.IsZero ? "-" + text : text;
    }

    public override string ToString() => ToString(decimals: 6);

    public int CompareTo(Rational other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public bool Equals(Rational other) =>
        Numerator == other.Numerator && _denominatorLessOne == other._denominatorLessOne;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, _denominatorLessOne);

    /// <summary>Newton's steps from above, which fall until they meet the root.</summary>
    private static BigInteger RootDown(BigInteger value)
    {
        if (value.IsZero)
        {
            return value;
        }

        var guess = BigInteger.One << (int)((value.GetBitLength() + 1) / 2);
        while (true)
        {
            var next = (guess + (value / guess)) / 2;
            if (next >= guess)
            {
                return guess;
            }

            guess = next;
        }
    }

    private static BigInteger BigMod(BigInteger value, BigInteger modulus)
    {
        var rest = BigInteger.Remainder(value, modulus);
        return rest.Sign < 0 ? rest + modulus : rest;
    }

    private static bool AllDigits(ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');
}
