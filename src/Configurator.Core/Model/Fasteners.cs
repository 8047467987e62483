namespace Configurator.Core.Model;

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
