using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>Short lists side by side, to be ticked off on paper where they have boxes.</summary>
public sealed record CheckLists(ImmutableArray<CheckList> Lists, bool HasBoxes) : Block;

public sealed record CheckList(string Title, ImmutableArray<string> Items);
