using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>Carries homes over to fits whose option was renamed, or that moved to another option with their device and
/// place: the cable stays where it is.</summary>
public static class FormerHomes
{
    /// <param name="written">Every line of the plan, those included that name no fit any more.</param>
    public static ImmutableSortedDictionary<InstanceKey, Home> Carry(
        Machine machine,
        ImmutableSortedDictionary<InstanceKey, Home> written
    )
    {
        var lost = written.Keys.Except(machine.Instances.Select(instance => instance.Key)).ToHashSet();
        var homes = written.ToBuilder();
        foreach (var instance in machine.Instances.Where(instance => !written.ContainsKey(instance.Key)))
        {
            if (Former(instance, lost.Where(key => CanLive(machine, instance, written[key]))) is { } former)
            {
                lost.Remove(former);
                homes[instance.Key] = written[former];
                homes.Remove(former);
            }
        }

        return homes.ToImmutable();
    }

    private static bool CanLive(Machine machine, FitInstance instance, Home home) =>
        home.Master is not { } carrier
            ? instance.Fit.Wiring == Wiring.Direct
            : instance.Fit.Wiring == Wiring.Port
                && machine.Carriers.TryGetValue(carrier, out var ports)
                && ports.ClassOf(home.Port) is { } offered
                && PlanSpot.Of(machine, instance, carrier, offered).IsPossible;

    private static InstanceKey? Former(FitInstance instance, IEnumerable<InstanceKey> lost)
    {
        var formerly = instance.Option?.Formerly.Select(id => id.Value).ToHashSet(StringComparer.Ordinal) ?? [];
        var same = lost.Where(key => key.Fit == instance.Key.Fit && key.Ordinal == instance.Key.Ordinal)
            .OrderByDescending(key => formerly.Contains(key.Source))
            .ThenBy(key => key)
            .ToList();
        return same.Count > 0 ? same[0] : null;
    }
}
