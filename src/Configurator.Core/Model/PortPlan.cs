using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>Where a cable ends: a port of a master, or the control box (<c>direct</c>).</summary>
/// <param name="Master">Null for the control box.</param>
public readonly record struct Home(MasterName? Master, int Port)
{
    public const string DirectWord = "direct";

    public static Home Direct { get; } = new(null, 0);

    public bool IsDirect => Master is null;

    /// <summary>Reads <c>direct</c> or <c>MASTER:PORT</c>; null for anything else.</summary>
    public static Home? Parse(string text)
    {
        if (text == DirectWord)
        {
            return Direct;
        }

        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return
            colon > 0
            && int.TryParse(text.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var port)
            ? new(new(text[..colon]), port)
            : null;
    }

    public override string ToString() =>
        Master is { } master ? FormattableString.Invariant($"{master}:{Port}") : DirectWord;
}

/// <summary>The home port of every fit of a machine, the same in all orders.</summary>
public sealed record PortPlan(ImmutableSortedDictionary<InstanceKey, Located<Home>> Homes, SourceSpan Span)
{
    /// <summary>False where a line was reported and left out: then a home that is missing says nothing.</summary>
    public bool IsWhole { get; init; } = true;

    public static PortPlan Empty { get; } = new(ImmutableSortedDictionary<InstanceKey, Located<Home>>.Empty, default);

    public Home? HomeOf(InstanceKey key) => Homes.TryGetValue(key, out var home) ? home.Value : null;
}
