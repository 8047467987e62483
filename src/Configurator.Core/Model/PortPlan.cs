using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>Where a cable ends: a port of a master or hub, or the control box (<c>direct</c>).</summary>
/// <param name="Master">Null for the control box.</param>
/// <param name="IsPinTwo">The second signal of a class A port, at pin 2 through a splitter.</param>
public readonly record struct Home(MasterName? Master, int Port, bool IsPinTwo = false)
{
    public const string DirectWord = "direct";
    private const string PinTwo = "/pin-2";

    public static Home Direct { get; } = new(null, 0);

    public bool IsDirect => Master is null;

    /// <summary>Reads <c>direct</c>, <c>MASTER:PORT</c> or <c>MASTER:PORT/pin-2</c>; null for anything else.</summary>
    public static Home? Parse(string text)
    {
        if (text == DirectWord)
        {
            return Direct;
        }

        var isPinTwo = text.EndsWith(PinTwo, StringComparison.Ordinal);
        var written = isPinTwo ? text[..^PinTwo.Length] : text;
        var colon = written.IndexOf(':', StringComparison.Ordinal);
        return
            colon > 0
            && int.TryParse(written.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var port)
            ? new(new(written[..colon]), port, isPinTwo)
            : null;
    }

    public override string ToString() =>
        Master is { } master ? FormattableString.Invariant($"{master}:{Port}{(IsPinTwo ? PinTwo : "")}") : DirectWord;
}

/// <summary>The home port of every fit of a machine, the same in all orders.</summary>
public sealed record PortPlan(ImmutableSortedDictionary<InstanceKey, Located<Home>> Homes, SourceSpan Span)
{
    /// <summary>False where a line was reported and left out: then a home that is missing says nothing.</summary>
    public bool IsWhole { get; init; } = true;

    /// <summary>Numbers of inputs, outputs and ports of the box that fits keep; empty where the plan keeps
    /// none.</summary>
    public ImmutableSortedDictionary<InstanceKey, Located<BoxPins>> Points { get; init; } =
        ImmutableSortedDictionary<InstanceKey, Located<BoxPins>>.Empty;

    /// <summary>False where numbers were reported and left out: then a number that is missing says nothing.</summary>
    public bool ArePointsWhole { get; init; } = true;

    public static PortPlan Empty { get; } = new(ImmutableSortedDictionary<InstanceKey, Located<Home>>.Empty, default);

    /// <summary>Numbers that an instance keeps, counting from 1; empty where the plan keeps none.</summary>
    public ImmutableArray<int> PointsOf(InstanceKey key, BoxPoint point) =>
        Points.TryGetValue(key, out var pins) ? pins.Value.Of(point) : [];

    public Home? HomeOf(InstanceKey key) => Homes.TryGetValue(key, out var home) ? home.Value : null;
}

/// <summary>What one instance takes of the box.</summary>
public sealed record BoxPins(ImmutableSortedDictionary<BoxPoint, ImmutableArray<int>> Numbers)
{
    public ImmutableArray<int> Of(BoxPoint point) => Numbers.GetValueOrDefault(point, []);
}
