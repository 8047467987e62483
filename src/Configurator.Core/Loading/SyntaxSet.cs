using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

/// <summary>One YAML file read soundly enough to be bound.</summary>
public sealed record SyntaxFile(SourceText Source, MappingSyntax Root)
{
    public string Path => Source.Path;
}

/// <summary>All that was read: definitions, Markdown notes, and the other files as they are.</summary>
/// <param name="Unread">Paths of definitions with errors so grave that nothing of them is known but their name.</param>
public sealed record SyntaxSet(
    ImmutableArray<SyntaxFile> Definitions,
    ImmutableArray<SourceText> Notes,
    ImmutableArray<SourceText> Templates,
    ImmutableArray<SourceFile> Assets,
    ImmutableArray<string> Unread
);
