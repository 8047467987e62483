using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>A finished table. The first column names the row.</summary>
/// <param name="Id">Unique on its page; also the name of a download.</param>
public sealed record Table(string Id, string Caption, ImmutableArray<Column> Columns, ImmutableArray<Row> Rows) : Block
{
    /// <summary>What to say where there are no rows.</summary>
    public string WhenEmpty { get; init; } = "–";

    /// <summary>False where the heading above says the same: the caption is then there for listeners only.</summary>
    public bool IsCaptionShown { get; init; } = true;

    /// <summary>So many columns that a phone shows each row as a card.</summary>
    public bool IsWide => Columns.Length > 4;

    /// <summary>So many columns that a screen shows it in smaller type.</summary>
    public bool IsDense => Columns.Length > 10;
}

/// <param name="IsNumber">Aligned to the right.</param>
public sealed record Column(string Title, bool IsNumber = false);

/// <param name="Status">A word for the style sheet such as <c>fail</c>; the meaning always stands in a cell
/// too.</param>
public sealed record Row(ImmutableArray<Cell> Cells, string Status = "", string? Id = null)
{
    public static Row Of(params ImmutableArray<Cell> cells) => new(cells);
}

/// <summary>Contents of one cell. An empty one prints as a dash.</summary>
/// <param name="Swatch">An IEC 60757 colour code whose colour is shown beside the text.</param>
public sealed record Cell(ImmutableArray<Link> Links, string? Swatch = null)
{
    public static implicit operator Cell(string text) => new([new(text)]);

    public static implicit operator Cell(Link link) => new([link]);

    public static Cell Of(IEnumerable<Link> links) => new([.. links]);

    /// <summary>Percent of a limit, for a bar beside the text; null where there is none.</summary>
    public int? Share { get; init; }

    public string Text => string.Join(", ", Links.Select(link => link.Text));

    public bool IsEmpty => Text.Length == 0;
}
