using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Tests of stops and guards: each channel by itself, what it drops, that a reset is refused while it is
/// given, and that a contact that stays closed is found.</summary>
/// <remarks>Source: IEC 60204-1 clauses 9.2.3.4 and 18.6, ISO 13850 4.1 (no start by release or reset alone), ISO
/// 14118; from memory. Feedback of contacts: common practice, no source. Validation by ISO 13849-2 is for competent
/// persons.</remarks>
internal static class SafetyTests
{
    public static ImmutableArray<AcceptanceTest> Of(ConfigurationContext context)
    {
        var needing = SafetyChecks.Needing(context.Fitted).Where(pair => pair.Needs.Inputs > 0).ToList();
        var givers = needing
            .Where(pair => pair.Instance.Fit.DroppedBy.IsEmpty && pair.Instance.Device.Kind == DeviceKind.Safety)
            .ToList();
        return
        [
            .. givers.Select(pair => Channels(context, pair.Instance, pair.Needs)),
            .. givers
                .Where(pair => pair.Instance.Fit.Wiring != Wiring.Inside)
                .Select(pair => Stop(context, pair.Instance)),
            .. Circuits(context),
            .. new BoxWays(context).Droppers().Select(instance => Dropped(context, instance)),
            .. Drives(context),
            .. needing
                .Where(pair => pair.Instance.Device.Kind == DeviceKind.Operator)
                .Select(pair => Reset(context, pair.Instance)),
            .. needing
                .Where(pair => !pair.Instance.Fit.DroppedBy.IsEmpty)
                .Select(pair => Feedback(context, pair.Instance)),
        ];
    }

    private static AcceptanceTest Channels(ConfigurationContext context, FitInstance instance, SafetyNeeds needs)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        return new(
            context.Names.Of(instance),
            words.TestSafety,
            $"{context.In(instance.Fit.Purpose)}; {DocumentContext.Print(needs.Inputs)}/{DocumentContext.Print(needs.Outputs)} {words.ChannelsInOut}",
            Joined(words.EachChannel, ways.Inputs(instance), ways.Outputs(instance))
        );
    }

    /// <summary>A guard that is locked cannot be opened while the machine runs: that is tried first.</summary>
    private static AcceptanceTest Stop(ConfigurationContext context, FitInstance instance)
    {
        var words = context.Words;
        var dropped = StopMatrix.DroppedBy(context, instance.Fit.Stop?.Value).ToList();
        return new(
            context.Names.Of(instance),
            instance.Device.Safety is { Outputs: > 0 } ? words.GiveLockedStop : words.GiveStop,
            $"{(dropped.Count > 0 ? $"{words.Off}: {string.Join(", ", dropped)}" : words.StopNotStated)}; {words.StopExpected}",
            new BoxWays(context).Inputs(instance)
        );
    }

    private static IEnumerable<AcceptanceTest> Circuits(ConfigurationContext context)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        return (context.Fitted.Machine.Control.Power?.Circuits ?? []).Select(circuit => new AcceptanceTest(
            circuit.Name.Value,
            words.TestStop,
            circuit.DroppedBy.IsEmpty ? words.StaysLive : $"{words.Dead}: {context.DroppedBy(circuit)}",
            ways.Standard(circuit.SwitchedBy?.Value) is { } contacts ? context.Names.Of(contacts) : ""
        ));
    }

    private static AcceptanceTest Dropped(ConfigurationContext context, FitInstance instance) =>
        new(
            context.Names.Of(instance),
            context.Words.TestRelease,
            $"{context.Words.Dropped}: {context.DroppedBy(instance.Fit.DroppedBy)}",
            new BoxWays(context).Outputs(instance)
        );

    /// <summary>A channel that is bridged at one drive shows at that drive alone.</summary>
    private static IEnumerable<AcceptanceTest> Drives(ConfigurationContext context)
    {
        var ways = new BoxWays(context);
        return context
            .Fitted.Fitted.Where(instance => !instance.Device.WiresTo(CoreTarget.TorqueOff).IsEmpty)
            .Select(drive => new AcceptanceTest(
                context.Names.Of(drive),
                context.Words.TestTorqueOff,
                context.Words.NoTorque,
                $"{ways.On(drive, CoreTarget.TorqueOff, 1)}, {ways.On(drive, CoreTarget.TorqueOff, 2)}"
            ));
    }

    private static AcceptanceTest Reset(ConfigurationContext context, FitInstance instance) =>
        new(
            context.Names.Of(instance),
            context.Words.HoldReset,
            context.Words.ResetByRelease,
            new BoxWays(context).Inputs(instance)
        );

    private static AcceptanceTest Feedback(ConfigurationContext context, FitInstance instance) =>
        new(
            context.Names.Of(instance),
            context.Words.OpenFeedback,
            context.Words.ResetRefused,
            new BoxWays(context).Inputs(instance)
        );

    private static string Joined(params string[] parts) => string.Join("; ", parts.Where(part => part.Length > 0));
}
