namespace Configurator.Core.Model;

/// <summary>A terminal of a device that is mounted inside the box.</summary>
/// <param name="At">As it is printed on the device.</param>
/// <param name="Carries">Such as <c>command</c>.</param>
public sealed record Terminal(string At, string Carries, CoreTarget LeadsTo)
{
    /// <summary>Another terminal of the same device that it is linked to; empty for what leads elsewhere.</summary>
    public string LinkedTo { get; init; } = "";
}
