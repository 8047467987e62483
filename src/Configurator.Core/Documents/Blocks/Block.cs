using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Documents.Blocks;

/// <summary>A finished piece of a page: sorted, linked, formatted, with units. Templates only lay it out.</summary>
public abstract record Block
{
    /// <summary>Which partial template lays it out.</summary>
    public string Template => $"blocks/_{GetType().Name}.cshtml";
}

/// <summary>A text that may lead somewhere. <paramref name="Href"/> is relative to the page it stands on.</summary>
public sealed record Link(string Text, string? Href = null);

/// <summary>Terms and values; terms without a value are left out.</summary>
public sealed record Facts(ImmutableArray<Fact> Items) : Block
{
    public ImmutableArray<Fact> Items { get; } =
    [.. Items.Where(fact => fact.Values.Any(value => value.Text.Length > 0))];
}

public sealed record Fact(string Term, ImmutableArray<Link> Values)
{
    public static Fact Of(string term, string value) => new(term, [new(value)]);
}

/// <summary>Prose of a definition, Markdown, and where it comes from.</summary>
/// <param name="BelowLevel">Level of the heading under which it stands.</param>
public sealed record Passage(string Markdown, SourceSpan Span, int BelowLevel) : Block
{
    /// <summary>Set where it is in another language than its page.</summary>
    public string? Language { get; init; }
}

/// <summary>A plain paragraph of our own.</summary>
public sealed record Paragraph(string Text) : Block;

/// <summary>Sentences that warn, or that say what a page does not cover.</summary>
public sealed record Caution(string Title, ImmutableArray<string> Lines) : Block;

/// <summary>Links with a line of explanation each.</summary>
public sealed record LinkList(ImmutableArray<LinkItem> Items) : Block;

public sealed record LinkItem(Link Link, string Text, string Mark = "");

/// <summary>What people do, in order.</summary>
public sealed record Steps(ImmutableArray<Step> Items) : Block;

/// <param name="Additions">What each fitted option adds here: its name, and its prose.</param>
public sealed record Step(string Id, string Title, ImmutableArray<string> Lines, ImmutableArray<Addition> Additions);

public sealed record Addition(Link From, Passage Passage);
