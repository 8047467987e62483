using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Can each IO-Link device keep the cycle that it states, with the messages that its data need?</summary>
internal static class CycleChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        fitted
            .Fitted.Where(instance =>
                instance is { Device: { IoLink: not null, Connection: ConnectionKind.IoLink }, Fit.Wiring: Wiring.Port }
            )
            .Select(instance => Of(instance, instance.Device.IoLink!));

    private static Finding Of(FitInstance instance, IoLinkData data)
    {
        var sequence = MSequences.Of(data);
        var longest = sequence.MillisecondsMax(data.Rate);
        var shortest = CycleTime.ShortestFor(longest);
        return Finding.AtLeast(
            TimingRules.Cycle,
            instance.Key.ToString(),
            $"`{instance.Device.Id.Value}` states a cycle of {data.Cycle}; its messages ({sequence.Type} at "
                + FormattableString.Invariant($"{Word(data.Rate)}, {data.InputOctets} octets in, ")
                + FormattableString.Invariant($"{data.OutputOctets} out, {data.OnRequestOctets} on request) ")
                + $"take up to {new Measure(longest, "ms")}",
            new(data.Cycle.InBase, "ms"),
            new(longest, "ms"),
            instance.Device.Id.Span
        ) with
        {
            Fix =
                data.Cycle.InBase >= longest ? null
                : shortest is { } cycle
                    ? $"state `cycle: {cycle} ms`, the next that a device can state, or less process data"
                : "state less process data or a faster rate",
        };
    }

    public static string Word(BitRate rate) => rate.ToString().ToUpperInvariant();
}
