namespace Configurator.Core.Model.Units;

/// <summary>A computed value in the unit in which it is printed; without a unit it is a count.</summary>
public readonly record struct Measure(Rational Value, string Unit) : IComparable<Measure>
{
    private const int DecimalsMax = 3;

    public static Measure Count(long value) => new(value, "");

    public static Measure Of(Microamperes current) => new(new(current.Value, 1000), "mA");

    public static Measure Of(Micrometres length) => new(new(length.Value, 1_000_000), "m");

    public static Measure operator -(Measure left, Measure right) => new(left.Value - right.Value, left.Unit);

    public int CompareTo(Measure other) => Value.CompareTo(other.Value);

    public override string ToString() =>
        Unit.Length == 0 ? Value.ToString(DecimalsMax) : $"{Value.ToString(DecimalsMax)} {Unit}";
}
