namespace Configurator.Core.Model;

// Ids are types, so that a station cannot pass for an option. All compare and print as their text, ordinally.

public readonly record struct MachineId(string Value) : IComparable<MachineId>
{
    public int CompareTo(MachineId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct OptionId(string Value) : IComparable<OptionId>
{
    public int CompareTo(OptionId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct DeviceId(string Value) : IComparable<DeviceId>
{
    public int CompareTo(DeviceId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct StationId(string Value) : IComparable<StationId>
{
    public int CompareTo(StationId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct AreaId(string Value) : IComparable<AreaId>
{
    public int CompareTo(AreaId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct NodeId(string Value) : IComparable<NodeId>
{
    public int CompareTo(NodeId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct MasterName(string Value) : IComparable<MasterName>
{
    public int CompareTo(MasterName other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

/// <summary>The name of a fit for ever, unique on a machine; designations come from it, never from counting.</summary>
public readonly record struct FitName(string Value) : IComparable<FitName>
{
    public int CompareTo(FitName other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct ChoiceId(string Value) : IComparable<ChoiceId>
{
    public int CompareTo(ChoiceId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct RuleId(string Value) : IComparable<RuleId>
{
    public int CompareTo(RuleId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct ConfigurationId(string Value) : IComparable<ConfigurationId>
{
    public int CompareTo(ConfigurationId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct RecipeId(string Value) : IComparable<RecipeId>
{
    public int CompareTo(RecipeId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}

public readonly record struct AsBuiltId(string Value) : IComparable<AsBuiltId>
{
    public int CompareTo(AsBuiltId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}
