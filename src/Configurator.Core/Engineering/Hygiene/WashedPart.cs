using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Something that a wash reaches, in its area, and what makes it be there.</summary>
/// <param name="About">Names it in findings.</param>
/// <param name="Device">Null for the control box.</param>
/// <param name="When">Holds of the orders in which it is mounted.</param>
internal sealed record WashedPart(
    string About,
    Device? Device,
    ImmutableArray<string> Ingress,
    ImmutableArray<string> Materials,
    Area Area,
    Condition When,
    SourceSpan Span
)
{
    /// <summary>False for cables, caps and the box: their surfaces are judged by stand-off alone.</summary>
    public bool HasFinish { get; init; }

    /// <summary>False for cables that end in the glands of what they feed: only their jackets are judged.</summary>
    public bool HasMarking { get; init; } = true;

    /// <summary>As messages name it.</summary>
    public string Name => Device is null ? $"`{About}`" : $"`{Device.Id.Value}` of `{About}`";

    public static WashedPart Of(string about, Device device, Area area, Condition when, SourceSpan span) =>
        new(about, device, device.Ingress, device.Materials, area, when, span);

    public WashedPart With(Device other) =>
        this with
        {
            Device = other,
            Ingress = other.Ingress,
            Materials = other.Materials,
        };
}
