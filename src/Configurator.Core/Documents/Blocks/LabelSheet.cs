using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>Labels on a common grid: A4 with three columns and eight rows of 70 mm by 37 mm.</summary>
public sealed record LabelSheet(string Id, ImmutableArray<CableLabel> Labels) : Block;

/// <param name="Name">What the label names, in large print.</param>
/// <param name="Lines">What else stands on it.</param>
/// <param name="Code">The address behind the code; null where there is none.</param>
/// <param name="Anchor">Names the code's drawing, which labels of one cable share.</param>
/// <param name="IsFirst">The drawing stands in this label; the others point to it.</param>
public sealed record CableLabel(
    string Name,
    ImmutableArray<string> Lines,
    QrCode? Code,
    string Anchor,
    bool IsFirst
);
