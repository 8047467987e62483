using System.Numerics;

namespace Configurator.Core.Logic.Compiling;

/// <summary>
/// All that tells one component from another: its variables, the domains of those that lost values, and its clauses.
/// Clauses of two literals follow from the variables and are left out. Equal keys mean equal components.
/// </summary>
internal readonly struct ComponentKey : IEquatable<ComponentKey>
{
    private readonly int[] _parts;
    private readonly int _hash;

    private ComponentKey(int[] parts)
    {
        _parts = parts;
        var hash = 17u;
        foreach (var part in parts)
        {
            hash = unchecked((BitOperations.RotateLeft(hash, 5) ^ (uint)part) * 0x9E3779B1u);
        }

        _hash = unchecked((int)hash);
    }

    public static ComponentKey Of(Component component, ClauseStore store)
    {
        var parts = new List<int>(component.Variables.Length + component.Clauses.Length);
        foreach (var variable in component.Variables)
        {
            parts.Add(variable);
            if (!store.IsBinary(variable))
            {
                var domain = store.Domain(variable);
                parts.Add(unchecked((int)(uint)domain));
                parts.Add(unchecked((int)(uint)(domain >> 32)));
            }
        }

        parts.Add(-1);
        foreach (var clause in component.Clauses)
        {
            if (store.Length(clause) > 2)
            {
                parts.Add(clause);
            }
        }

        return new([.. parts]);
    }

    public bool Equals(ComponentKey other) => _hash == other._hash && _parts.AsSpan().SequenceEqual(other._parts);

    public override bool Equals(object? obj) => obj is ComponentKey other && Equals(other);

    public override int GetHashCode() => _hash;
}
