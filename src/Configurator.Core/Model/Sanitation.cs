using System.Collections.Immutable;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>How a machine is cleaned: with what, what changes it, and how it is built for it.</summary>
/// <param name="Span">Where the machine says so.</param>
public sealed record Sanitation(SourceSpan Span)
{
    /// <summary>Closes every socket without a cable; null where the machine names none.</summary>
    public Device? Cap { get; init; }

    /// <summary>Markings of the control box.</summary>
    public ImmutableArray<string> BoxIngress { get; init; } = [];

    public ImmutableArray<string> BoxMaterials { get; init; } = [];

    /// <summary>Clear height below the machine.</summary>
    public Quantity? Floor { get; init; }

    /// <summary>Least fall of surfaces that look level.</summary>
    public Quantity? Slope { get; init; }

    public ImmutableArray<Agent> Agents { get; init; } = [];

    public ImmutableArray<WashChange> Changes { get; init; } = [];

    public ImmutableArray<AreaBuild> Areas { get; init; } = [];

    public WashCare Care { get; init; } = WashCare.None;

    public AreaBuild? BuildOf(AreaId area) => Areas.FirstOrDefault(build => build.Area == area);
}
