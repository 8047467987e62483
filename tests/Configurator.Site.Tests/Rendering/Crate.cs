using System.Collections.Immutable;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

/// <summary>A page record for tests: what is packed, how heavy it is and where it goes.</summary>
public record Crate(string Title, decimal Grams, ImmutableArray<Slot> Slots, SafeHtml? Notes)
{
    public string? Remark { get; init; }
}

public sealed record Slot(string Name)
{
    public ImmutableArray<Slot> Inner { get; init; } = [];
}
