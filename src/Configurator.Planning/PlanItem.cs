using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>One fit that needs a port.</summary>
/// <param name="Condition">Which of the problem's conditions it is fitted under.</param>
/// <param name="Current">Taken from L+ in microamperes, without what hangs on a hub.</param>
/// <param name="CurrentMax">Of a hub with all that may hang on it.</param>
/// <param name="Extra">Taken from the extra supply of a class B port, in microamperes.</param>
/// <param name="Old">Its home so far, where that can be kept.</param>
internal sealed record PlanItem(
    int Index,
    FitInstance Instance,
    int Condition,
    long Current,
    long CurrentMax,
    long Extra,
    Home? Old
)
{
    public InstanceKey Key => Instance.Key;

    /// <summary>The hub that it is; null for every other device.</summary>
    public MasterName? Hub => FittedMachine.AsCarrier(Instance);
}

/// <summary>The ports of one class of a master or hub.</summary>
/// <param name="Extension">Which of the machine's extensions it belongs to; null for base masters and hubs.</param>
/// <param name="Hub">The item that is the hub; null for masters.</param>
internal sealed record PlanGroup(
    int Index,
    int Carrier,
    MasterName Name,
    PortClass Class,
    ImmutableArray<int> Ports,
    int? Extension,
    int? Hub
);

/// <summary>A master or hub as a whole.</summary>
/// <param name="Spare">Ports that the policy keeps free; none of hubs.</param>
/// <param name="PortMax">One port, in microamperes.</param>
/// <param name="CurrentMax">All ports together, in microamperes; null where nothing is stated.</param>
internal sealed record PlanCarrier(
    int Index,
    MasterName Name,
    int Ports,
    int Spare,
    long PortMax,
    long? CurrentMax,
    long? ExtraMax,
    int? Extension,
    int? Hub
);
