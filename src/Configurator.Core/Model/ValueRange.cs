using Configurator.Core.Model.Units;

namespace Configurator.Core.Model;

/// <summary>What a raw value stands for: limits and what one count is worth, all in one unit. Null where nobody
/// says.</summary>
/// <param name="Unit">Null where values are bare numbers.</param>
public sealed record ValueRange(Unit? Unit, Rational? From, Rational? To, Rational? Step)
{
    public static ValueRange None { get; } = new(null, null, null, null);
}
