using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

/// <summary>A piece of a YAML document and where it stands. Knows nothing of machines.</summary>
public abstract class SyntaxNode(SourceSpan span)
{
    public SourceSpan Span { get; } = span;

    /// <summary>Nothing in it was refused.</summary>
    public virtual bool IsSound => true;
}

/// <summary>One value as written; <paramref name="isPlain"/> means without quotes.</summary>
public sealed class ScalarSyntax(string text, bool isPlain, SourceSpan span) : SyntaxNode(span)
{
    public string Text { get; } = text;

    public bool IsPlain { get; } = isPlain;

    /// <summary>Nothing was written: <c>key:</c> and then the line's end.</summary>
    public bool IsEmpty => IsPlain && Text.Length == 0;
}

public sealed class SequenceSyntax(ImmutableArray<SyntaxNode> items, SourceSpan span) : SyntaxNode(span)
{
    public ImmutableArray<SyntaxNode> Items { get; } = items;

    public override bool IsSound { get; } = items.All(item => item.IsSound);
}

/// <param name="isWhole">No entry was refused and left out.</param>
public sealed class MappingSyntax(ImmutableArray<EntrySyntax> entries, SourceSpan span, bool isWhole = true)
    : SyntaxNode(span)
{
    public ImmutableArray<EntrySyntax> Entries { get; } = entries;

    public bool IsWhole { get; } = isWhole;

    public override bool IsSound { get; } = isWhole && entries.All(entry => entry.Value.IsSound);

    public SyntaxNode? this[string key] => Entries.FirstOrDefault(entry => entry.Key.Text == key)?.Value;
}

public sealed record EntrySyntax(ScalarSyntax Key, SyntaxNode Value);

/// <summary>Stands where something was refused and reported; later stages pass over it in silence.</summary>
public sealed class RefusedSyntax(SourceSpan span) : SyntaxNode(span)
{
    public override bool IsSound => false;
}
