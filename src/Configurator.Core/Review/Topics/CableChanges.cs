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
        foreach (var cable in Gather.Differing(was, now, Say, StringComparer.Ordinal))
        {
            yield return new(
                HardwareKinds.CableChanged,
                cable.Key,
                [
                    .. cable.Now is DeviceCable here
                        ? PlacesOf.Instance(pair.After.Machine, here.Instance, isBefore: false)
                        : [],
                    .. cable.Was is DeviceCable gone
                        ? PlacesOf.Instance(pair.Before.Machine, gone.Instance, isBefore: true)
                        : [],
                    ReviewPlace.After(pair.After.Machine.Id.Span),
                ]
            )
            {
                Machine = pair.Machine,
                Before = cable.Before,
                After = cable.After,
                Configurations = [pair.Id.Value],
            };
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
