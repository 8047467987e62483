using System.Collections.Immutable;
using System.Globalization;

namespace Configurator.Core.Documents.Blocks;

/// <summary>A plain drawing: boxes, lines and words on a grid of whole units. Meaning is carried by words and
/// shape.</summary>
/// <param name="Alternative">The same in words, for those who cannot see it.</param>
public sealed record Drawing(
    string Id,
    string Title,
    string Alternative,
    int Width,
    int Height,
    ImmutableArray<Shape> Shapes
) : Block
{
    public string ViewBox => string.Create(CultureInfo.InvariantCulture, $"0 0 {Width} {Height}");
}

/// <param name="Style">A word for the style sheet.</param>
public abstract record Shape(string Style);

public sealed record Box(int X, int Y, int Width, int Height, string Style) : Shape(Style);

public sealed record Stroke(int X1, int Y1, int X2, int Y2, string Style) : Shape(Style);

/// <param name="Anchor">start, middle or end.</param>
public sealed record Label(int X, int Y, string Text, string Anchor, string Style) : Shape(Style);

/// <summary>A circle: a round connector or a station.</summary>
public sealed record Ring(int X, int Y, int Radius, string Style) : Shape(Style);
