using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>Short lists side by side.</summary>
public sealed record CheckLists(ImmutableArray<CheckList> Lists) : Block;

public sealed record CheckList(string Title, ImmutableArray<string> Items)
{
    /// <summary>To be ticked off on paper; not so what must be left alone.</summary>
    public bool HasBoxes { get; init; } = true;
}
