using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Power;

/// <summary>The channels that feed 24 V to what is wired into the box and what is mounted inside.</summary>
internal static class BoxChannelChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        Channels(fitted.Machine.Control.Box)
            .Select(channel =>
            {
                var drawn = Microamperes.Sum(fitted.Fitted.Where(channel.Feeds).Select(Current));
                return Finding.AtMost(
                    PowerRules.BoxChannel,
                    channel.Name,
                    $"the channel of what is {channel.Fed} gives {drawn}",
                    new(new(drawn.Value, 1_000_000), "A"),
                    new(channel.Protection.InBase / 1000, "A"),
                    channel.Span
                ) with
                {
                    Fix = "feed some of it from another channel, or take a larger one that its cables allow",
                };
            });

    /// <summary>What each channel gives in each order.</summary>
    public static IEnumerable<WeightedSum> Sums(Machine machine) =>
        Channels(machine.Control.Box)
            .Select(channel =>
                FitSums.Of(
                    FitConditions
                        .Sound(machine)
                        .Where(channel.Feeds)
                        .Select(instance => (instance, Current(instance).Value))
                )
            );

    /// <summary>Where nothing is said of the inside, one channel feeds it all.</summary>
    private static IEnumerable<BoxChannel> Channels(ControlBox box) =>
        new[]
        {
            box is { Channel: { } one, Protection: { } whole }
                ? new BoxChannel(
                    "direct",
                    box.InsideChannel is null ? "wired to the box and mounted inside" : "wired to the box",
                    whole,
                    one.Span,
                    instance => IsDirect(instance) || (box.InsideChannel is null && IsInside(instance))
                )
                : null,
            box is { InsideChannel: { } inside, InsideProtection: { } own }
                ? new BoxChannel("inside", "mounted inside the box", own, inside.Span, IsInside)
                : null,
        }.OfType<BoxChannel>();

    private static bool IsDirect(FitInstance instance) => instance.Fit.Wiring == Wiring.Direct;

    private static bool IsInside(FitInstance instance) => instance.Fit.Wiring == Wiring.Inside;

    private static Microamperes Current(FitInstance instance) => TapLoads.Current(instance, CircuitUse.SensorSupply);

    private sealed record BoxChannel(
        string Name,
        string Fed,
        Quantity Protection,
        SourceSpan Span,
        Func<FitInstance, bool> Feeds
    );
}
