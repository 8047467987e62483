namespace Configurator.Core.Logic.Covering;

/// <summary>The field of q elements, q a power of a prime: elements are polynomials over the prime field, numbered by
/// their coefficients.</summary>
internal sealed class GaloisField
{
    private readonly int[,] _sum;
    private readonly int[,] _product;

    private GaloisField(int prime, int degree)
    {
        Size = Power(prime, degree);
        (_sum, _product) = (new int[Size, Size], new int[Size, Size]);
        var modulus = Irreducible(prime, degree);
        for (var a = 0; a < Size; a++)
        {
            for (var b = 0; b < Size; b++)
            {
                _sum[a, b] = Plus(a, b, prime);
                _product[a, b] = Times(a, b, prime, degree, modulus);
            }
        }
    }

    public int Size { get; }

    public int Add(int a, int b) => _sum[a, b];

    public int Multiply(int a, int b) => _product[a, b];

    /// <summary>Null where there is no field of that size.</summary>
    public static GaloisField? Of(int size)
    {
        var prime = Enumerable.Range(2, size).First(divisor => divisor >= size || size % divisor == 0);
        var degree = 0;
        for (var rest = size; rest > 1; rest /= prime)
        {
            if (rest % prime != 0)
            {
                return null;
            }

            degree++;
        }

        return size < 2 ? null : new(prime, degree);
    }

    private static int Power(int value, int exponent) =>
        Enumerable.Range(0, exponent).Aggregate(1, (power, _) => power * value);

    private static int Plus(int a, int b, int prime)
    {
        var (sum, place) = (0, 1);
        for (; a > 0 || b > 0; a /= prime, b /= prime, place *= prime)
        {
            sum += ((a % prime) + (b % prime)) % prime * place;
        }

        return sum;
    }

    /// <summary>The product of polynomials, its terms of high degree replaced by those that the modulus makes of
    /// them.</summary>
    private static int Times(int a, int b, int prime, int degree, int modulus)
    {
        var product = 0;
        for (var i = degree - 1; i >= 0; i--)
        {
            product = TimesX(product, prime, degree, modulus);
            var digit = a / Power(prime, i) % prime;
            product = Plus(product, Scaled(b, digit, prime), prime);
        }

        return product;
    }

    private static int TimesX(int a, int prime, int degree, int modulus)
    {
        var top = Power(prime, degree - 1);
        var lead = a / top;
        return Plus(a % top * prime, Scaled(modulus, (prime - lead) % prime, prime), prime);
    }

    private static int Scaled(int a, int factor, int prime)
    {
        var (scaled, place) = (0, 1);
        for (; a > 0; a /= prime, place *= prime)
        {
            scaled += a % prime * factor % prime * place;
        }

        return scaled;
    }

    /// <summary>The lower terms of the first monic polynomial of that degree under which x generates the field's
    /// multiplication; it is irreducible then.</summary>
    private static int Irreducible(int prime, int degree)
    {
        var size = Power(prime, degree);
        return Enumerable.Range(0, size).First(modulus => OrderOfX(prime, degree, modulus) == size - 1);
    }

    /// <summary>The least power of x that is 1; 0 where none below the size is.</summary>
    private static int OrderOfX(int prime, int degree, int modulus)
    {
        var power = 1;
        for (var exponent = 1; exponent < Power(prime, degree); exponent++)
        {
            power = degree == 1 ? power * Root(prime, modulus) % prime : TimesX(power, prime, degree, modulus);
            if (power == 1)
            {
                return exponent;
            }
        }

        return 0;
    }

    /// <summary>In the prime field x stands for the number that x + modulus makes zero.</summary>
    private static int Root(int prime, int modulus) => (prime - modulus) % prime;
}
