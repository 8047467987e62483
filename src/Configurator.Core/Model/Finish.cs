using Configurator.Core.Model.Units;

namespace Configurator.Core.Model;

/// <summary>What the outside of a part is like: surface roughness Ra, smallest inner radius, fasteners.</summary>
public sealed record Finish(Quantity Roughness, Quantity Radius, Fasteners Fasteners);
