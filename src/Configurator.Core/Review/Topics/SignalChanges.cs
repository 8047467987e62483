using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Signals between devices and the controller that came, went or go another way, where the device itself was
/// there before and is there now.</summary>
internal static class SignalChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        Gather.Alike(context.Configurations.SelectMany(pair => Of(context, pair)));

    private static IEnumerable<Change> Of(ReviewContext context, ConfigurationPair pair)
    {
        var was = Named(pair.Before, context.Renames.Of);
        var now = Named(pair.After, key => key);
        var devices = pair
            .Before.Report.Fitted.Fitted.Select(instance => context.Renames.Of(instance.Key))
            .Intersect(pair.After.Report.Fitted.Fitted.Select(instance => instance.Key))
            .ToHashSet();
        foreach (var signal in Gather.Differing(was, now, Say).Where(signal => devices.Contains(signal.Key.Key)))
        {
            yield return new(
                HardwareKinds.SignalsChanged,
                $"`{signal.Key.Key}` `{signal.Key.Name}`",
                signal.Now is { } here
                    ? PlacesOf.Instance(pair.After.Machine, here.Instance, isBefore: false)
                    : PlacesOf.Instance(pair.Before.Machine, signal.Was!.Instance, isBefore: true)
            )
            {
                Machine = pair.Machine,
                Before = signal.Before,
                After = signal.After,
                Configurations = [pair.Id.Value],
            };
        }
    }

    private static Dictionary<(InstanceKey Key, string Name), Signal> Named(
        EngineeredConfiguration built,
        Func<InstanceKey, InstanceKey> name
    ) =>
        SignalList
            .Of(built.Report.Fitted)
            .DistinctBy(signal => (signal.Instance.Key, signal.Name))
            .ToDictionary(signal => (name(signal.Instance.Key), signal.Name));

    private static string Say(Signal signal) =>
        signal.Item is null
            ? WordLists.Plain(signal.Kind)
            : FormattableString.Invariant(
                $"{WordLists.Plain(signal.Kind)}, {signal.Bits} bits at octet {signal.Item.Octet}"
            );
}
