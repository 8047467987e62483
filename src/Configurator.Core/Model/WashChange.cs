using System.Collections.Immutable;

namespace Configurator.Core.Model;

/// <summary>Where it holds, these areas are washed in another way.</summary>
public sealed record WashChange(Condition When, WashMethod Wash, ImmutableArray<AreaId> Areas);
