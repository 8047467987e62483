using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Cables that a published configuration needs now and did not, the other way round, and other
/// lengths.</summary>
internal static class CableChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        Gather.Alike(context.Configurations.SelectMany(pair => Of(context, pair)));

    private static IEnumerable<Change> Of(ReviewContext context, ConfigurationPair pair)
    {
        var was = Named(pair.Before, context.Renames.Of);
        var now = Named(pair.After, key => key);
        foreach (var name in was.Keys.Union(now.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var (before, after) = (was.GetValueOrDefault(name), now.GetValueOrDefault(name));
            if (
                (before is null ? "" : Say(before)) is var old
                && (after is null ? "" : Say(after)) is var said
                && old != said
            )
            {
                yield return new(
                    HardwareKinds.CableChanged,
                    name,
                    [
                        .. after is DeviceCable cable
                            ? PlacesOf.Instance(pair.After.Machine, cable.Instance, isBefore: false)
                            : [],
                        .. before is DeviceCable gone
                            ? PlacesOf.Instance(pair.Before.Machine, gone.Instance, isBefore: true)
                            : [],
                        ReviewPlace.After(pair.After.Machine.Id.Span),
                    ]
                )
                {
                    Machine = pair.Machine,
                    Before = old,
                    After = said,
                    Configurations = [pair.Id.Value],
                };
            }
        }
    }

    private static Dictionary<string, CableRun> Named(
        EngineeredConfiguration built,
        Func<InstanceKey, InstanceKey> name
    ) =>
        built
            .Report.Cables.DistinctBy(cable => Name(cable, name), StringComparer.Ordinal)
            .ToDictionary(cable => Name(cable, name), StringComparer.Ordinal);

    public static string Name(CableRun cable, Func<InstanceKey, InstanceKey> name) =>
        cable switch
        {
            DeviceCable device => $"`{name(device.Instance.Key)}`",
            TrunkCable { IsPower: true } trunk => $"trunk power to `{trunk.Next.Name.Value}`",
            TrunkCable trunk => $"trunk network to `{trunk.Next.Name.Value}`",
            NetworkCable network => $"network of `{name(network.Instance.Key)}`",
            _ => "",
        };

    public static string Say(CableRun cable) =>
        (
            cable switch
            {
                { Cordset: { } cordset, Stock: { } stock } => $"`{cordset.Id.Value}`, {stock.Written}",
                { Cordset: { } cordset } => $"`{cordset.Id.Value}`, no stock length reaches",
                { Needed: { } needed } => $"cut on site, {Measure.Of(needed)}",
                _ => "no way along the route",
            }
        ) + $", from `{cable.From.Id.Value}`";
}
