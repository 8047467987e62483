using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>What is kept of a file for the checks that look at several.</summary>
internal sealed record PageFacts(string Path)
{
    public IReadOnlySet<string> Ids { get; init; } = ImmutableHashSet<string>.Empty;

    public ImmutableArray<Reference> References { get; init; } = [];

    /// <summary>Null where the file is no page, or has none.</summary>
    public Located<string>? Title { get; init; }

    public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];
}
