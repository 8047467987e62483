using Configurator.Core.Model.Units;

namespace Configurator.Core.Model;

/// <summary>What the outside of a part is like: surface roughness Ra, smallest inner radius, fasteners.</summary>
public sealed record Finish(Quantity Roughness, Quantity Radius, Fasteners Fasteners);

/// <summary>From the easiest to clean to the hardest.</summary>
public enum Fasteners
{
    /// <summary>None to be seen, or welded and ground.</summary>
    None,

    /// <summary>Dome or sealed heads, no thread to be seen.</summary>
    Domed,

    /// <summary>Threads or recesses in view.</summary>
    Exposed,
}
