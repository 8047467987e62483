namespace Configurator.Core.Model.Units;

/// <summary>A value with its unit, as written, and the same in its dimension's base unit for exact
/// comparison.</summary>
/// <param name="InBase">mm, mA, V, W, ms, 1/min, m/min, bar, l/min, degC, kg, mm2, percent; for money the amount
/// itself.</param>
public sealed record Quantity(Rational Value, Unit Unit, Rational InBase, string Written)
{
    public Dimension Dimension => Unit.Dimension;

    public override string ToString() => Written;

    /// <summary>The value in another unit of the same dimension.</summary>
    /// <exception cref="ArgumentException">The unit measures something else, is another currency, or is AWG.</exception>
    public Rational In(Unit unit)
    {
        if (!unit.IsComparableWith(Unit) || unit.Symbol == "AWG")
        {
            throw new ArgumentException($"{Written} cannot be given in {unit}", nameof(unit));
        }

        return (InBase / unit.Factor) - unit.Offset;
    }
}
