namespace Configurator.Core.Model;

/// <summary>The identity of one mounted device for ever: what brings it, the fit's name, and which of its
/// stations.</summary>
/// <param name="Source">An option's id or <c>standard</c>.</param>
/// <param name="Ordinal">Position in the fit's list of stations, from 1.</param>
public readonly record struct InstanceKey(string Source, FitName Fit, int Ordinal) : IComparable<InstanceKey>
{
    public const string Standard = "standard";

    /// <summary>Reads <c>SOURCE/FIT/ORDINAL</c>; null for anything else.</summary>
    public static InstanceKey? Parse(string text)
    {
        var parts = text.Split('/');
        return
            parts.Length == 3
            && parts.All(part => part.Length > 0)
            && int.TryParse(
                parts[2],
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var ordinal
            )
            && ordinal > 0
            ? new(parts[0], new(parts[1]), ordinal)
            : null;
    }

    public int CompareTo(InstanceKey other)
    {
        var bySource = string.CompareOrdinal(Source, other.Source);
        var byFit = bySource != 0 ? bySource : Fit.CompareTo(other.Fit);
        return byFit != 0 ? byFit : Ordinal.CompareTo(other.Ordinal);
    }

    public override string ToString() => FormattableString.Invariant($"{Source}/{Fit}/{Ordinal}");
}

/// <summary>One device that a machine can carry, at its station, and what makes it be fitted.</summary>
/// <param name="Option">What brings it; null for the standard machine.</param>
public sealed record FitInstance(InstanceKey Key, Option? Option, Fit Fit, Device Device, Station Station)
{
    /// <summary>Is it on a machine built to that configuration?</summary>
    public bool IsFitted(Configuration configuration) =>
        IsBrought(configuration) && (Fit.When?.Holds(configuration.QuantityOf) ?? true);

    private bool IsBrought(Configuration configuration) =>
        Option is null || configuration.QuantityOf(Option.Id.Value) >= (Fit.Per == FitPer.Quantity ? Key.Ordinal : 1);
}
