namespace Configurator.Core.Model.Units;

/// <summary>A length in whole micrometres, so that sums of metric and inch lengths stay exact. Prints in mm below a
/// metre, else in m.</summary>
public readonly record struct Micrometres(long Value) : IComparable<Micrometres>
{
    public static Micrometres FromMillimetres(long millimetres) => new(millimetres * 1000);

    /// <summary>Rounded up to a whole micrometre.</summary>
    public static Micrometres From(Quantity length) => new((long)(length.InBase * 1000).Ceiling());

    public static Micrometres operator +(Micrometres left, Micrometres right) => new(left.Value + right.Value);

    public static Micrometres operator -(Micrometres left, Micrometres right) => new(left.Value - right.Value);

    public static bool operator <(Micrometres left, Micrometres right) => left.Value < right.Value;

    public static bool operator >(Micrometres left, Micrometres right) => left.Value > right.Value;

    public static bool operator <=(Micrometres left, Micrometres right) => left.Value <= right.Value;

    public static bool operator >=(Micrometres left, Micrometres right) => left.Value >= right.Value;

    public int CompareTo(Micrometres other) => Value.CompareTo(other.Value);

    public override string ToString() =>
        Math.Abs(Value) < 1_000_000
            ? new Rational(Value, 1000).ToString(decimals: 1) + " mm"
            : new Rational(Value, 1_000_000).ToString(decimals: 2) + " m";
}
