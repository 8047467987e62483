using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Planning;

/// <summary>Carries numbers in the box over to fits whose option was renamed: their wires stay where they
/// are.</summary>
public static class FormerPoints
{
    /// <param name="homes">Of every fit that has one now.</param>
    /// <param name="written">Lines of the plan as written, those included that name no fit any more.</param>
    public static PortPlan Carry(
        Machine machine,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        ImmutableSortedDictionary<InstanceKey, BoxPins> written
    ) =>
        new(
            homes.ToImmutableSortedDictionary(line => line.Key, line => new Located<Home>(line.Value, default)),
            default
        )
        {
            Points = machine
                .Instances.Select(instance => (instance.Key, Pins: Of(machine, instance, written)))
                .Where(line => line.Pins is not null)
                .ToImmutableSortedDictionary(line => line.Key, line => new Located<BoxPins>(line.Pins!, default)),
        };

    private static BoxPins? Of(
        Machine machine,
        FitInstance instance,
        ImmutableSortedDictionary<InstanceKey, BoxPins> written
    ) =>
        machine.Plan.Points.TryGetValue(instance.Key, out var kept)
            ? kept.Value
            : (instance.Option?.Formerly ?? [])
                .Select(id => instance.Key with { Source = id.Value })
                .Select(key => written.GetValueOrDefault(key))
                .FirstOrDefault(pins => pins is not null);
}
