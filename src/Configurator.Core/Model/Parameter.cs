using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>A setting of a device, by IO-Link index and subindex. Either a range with a step, or words.</summary>
public sealed record Parameter(Located<string> Name, Text Title, int Index, int Subindex, RawType Type)
{
    /// <summary>Of the range; null where values are bare integers or words.</summary>
    public Unit? Unit { get; init; }

    public Rational? From { get; init; }

    public Rational? To { get; init; }

    /// <summary>What one count of the raw value stands for.</summary>
    public Rational? Step { get; init; }

    public ImmutableArray<KeyValuePair<string, int>> Words { get; init; } = [];
}

/// <summary>How a parameter travels.</summary>
public enum RawType
{
    Bool,
    Uint8,
    Int8,
    Uint16,
    Int16,
    Uint32,
    Int32,
    Float32,
}

/// <summary>A value for a parameter: a number in the parameter's unit, or one of its words.</summary>
/// <param name="Written">As the definition says it.</param>
public sealed record SettingValue(Located<string> Written, Rational? Number, string? Word);
