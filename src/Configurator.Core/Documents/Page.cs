using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Core.Documents;

/// <summary>One page of the site, finished.</summary>
/// <param name="Path">From the site's root.</param>
/// <param name="Kind">What sort of page, a word for the style sheet.</param>
/// <param name="Title">Unique in the site.</param>
public sealed record Page(string Path, string Kind, string Title, SiteWords Words)
{
    /// <summary>The heading, where it is shorter than the title.</summary>
    public string? Heading { get; init; }

    /// <summary>The way here, from the catalogue.</summary>
    public ImmutableArray<Link> Crumbs { get; init; } = [];

    /// <summary>Documents of the same set; the page itself has no href.</summary>
    public ImmutableArray<Link> Siblings { get; init; } = [];

    public DocumentControl? Control { get; init; }

    /// <summary>Files with the same contents for other programs.</summary>
    public ImmutableArray<Link> Downloads { get; init; } = [];

    /// <summary>The first paragraph.</summary>
    public string Lead { get; init; } = "";

    public required ImmutableArray<Section> Sections { get; init; }

    /// <summary>The page's template; most pages are made of sections alone.</summary>
    public string Template { get; init; } = "Page.cshtml";

    /// <summary>From this page to a file of the site.</summary>
    public string Href(string target) => PagePaths.Relative(Path, target);

    public string SiteTitle { get; init; } = "";

    /// <summary>Style sheets and scripts that this page needs besides those of every page; files of the site.</summary>
    public ImmutableArray<string> Styles { get; init; } = [];

    public ImmutableArray<string> Scripts { get; init; } = [];

    /// <summary>The same page in each language, where there are several; the page itself has no href.</summary>
    public ImmutableArray<Translation> Translations { get; init; } = [];

    /// <summary>Texts that govern, for the foot of the page.</summary>
    public string Standards { get; init; } = "";
}

/// <summary>A page in a language, called by the language's own name.</summary>
public sealed record Translation(string Language, string Name, string? Href);

/// <summary>A headed part of a page.</summary>
/// <param name="Id">Unique on its page.</param>
public sealed record Section(string Id, string Title, ImmutableArray<Block> Blocks)
{
    /// <summary>Blocks as they stand under this heading.</summary>
    public ImmutableArray<Block> Blocks { get; } =
    [
        .. Blocks.Select(block =>
            block is Table table && table.Caption == Title ? table with { IsCaptionShown = false } : block
        ),
    ];
}

/// <summary>What makes a page a controlled document.</summary>
/// <param name="State">Draft or released, as printed.</param>
/// <param name="Approval">Who released it and when; empty for a draft.</param>
/// <param name="Definitions">Revision of the definitions it was made from.</param>
public sealed record DocumentControl(string Number, string Revision, string State, string Approval, string Definitions)
{
    /// <summary>Failed findings that somebody accepts, with reason and end.</summary>
    public ImmutableArray<string> Deviations { get; init; } = [];

    /// <summary>How it came to this revision, oldest first.</summary>
    public ImmutableArray<RevisionLine> History { get; init; } = [];

    /// <summary>For the foot of every sheet that is printed.</summary>
    public string Stamp(SiteWords words) =>
        string.Join(
            " | ",
            new[]
            {
                Number,
                $"{words.Revision} {Revision}",
                Approval.Length > 0 ? $"{State}: {Approval}" : State,
                $"{words.Definitions}: {Definitions}",
            }
        );
}

/// <summary>One line of a revision table.</summary>
public sealed record RevisionLine(string Revision, string On, string By, string Change);
