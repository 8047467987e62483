using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>Fields to be filled in by hand.</summary>
public sealed record FormFields(ImmutableArray<FormField> Fields) : Block;
