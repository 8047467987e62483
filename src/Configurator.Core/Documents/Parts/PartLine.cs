using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Parts;

/// <summary>One line of a parts list: so many of a device, and what they are called on the machine.</summary>
/// <param name="Length">Stock length, of cables; null for everything else.</param>
/// <param name="Names">Designations, one for each of the quantity; none of parts without any, such as caps.</param>
/// <param name="Places">Locations, each once.</param>
internal sealed record PartLine(
    Device Device,
    Quantity? Length,
    int Quantity,
    ImmutableArray<string> Names,
    ImmutableArray<string> Places
)
{
    /// <summary>Price of all together; null where none is stated.</summary>
    public Rational? Sum => Device.Price is { } price ? price.Value * Quantity : null;
}

/// <summary>Cable that is cut from the drum for devices without a plug.</summary>
internal sealed record DrumLine(Leads Leads, Micrometres Length, ImmutableArray<string> Names)
{
    public int Cores => Leads.Cores.Length;
}
