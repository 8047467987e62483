namespace Configurator.Core.Model.Units;

/// <summary>A current in whole microamperes, so that sums are exact. Prints in mA below 1 A, else in A.</summary>
public readonly record struct Microamperes(long Value) : IComparable<Microamperes>
{
    public static Microamperes Zero { get; }

    /// <summary>Rounded up to a whole microampere.</summary>
    public static Microamperes From(Quantity current) => new((long)(current.InBase * 1000).Ceiling());

    public static Microamperes Sum(IEnumerable<Microamperes> currents) => new(currents.Sum(current => current.Value));

    public static Microamperes operator +(Microamperes left, Microamperes right) => new(left.Value + right.Value);

    public static Microamperes operator -(Microamperes left, Microamperes right) => new(left.Value - right.Value);

    public static bool operator <(Microamperes left, Microamperes right) => left.Value < right.Value;

    public static bool operator >(Microamperes left, Microamperes right) => left.Value > right.Value;

    public static bool operator <=(Microamperes left, Microamperes right) => left.Value <= right.Value;

    public static bool operator >=(Microamperes left, Microamperes right) => left.Value >= right.Value;

    public int CompareTo(Microamperes other) => Value.CompareTo(other.Value);

    public override string ToString() =>
        Math.Abs(Value) < 1_000_000
            ? new Rational(Value, 1000).ToString(decimals: 1) + " mA"
            : new Rational(Value, 1_000_000).ToString(decimals: 3) + " A";
}
