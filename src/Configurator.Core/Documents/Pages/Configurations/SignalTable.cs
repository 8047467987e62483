using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every signal with its tag and its place, port by port.</summary>
internal static class SignalTable
{
    public static Table Of(ConfigurationContext context)
    {
        var words = context.Words;
        var live = new LiveWhen(context.Engineered.Machine);
        return new(
            "signals",
            words.Signals,
            [
                new(words.Tag),
                new(words.Signal),
                new(words.Purpose),
                new(words.Designation),
                new(words.Port),
                new(words.Octet, IsNumber: true),
                new(words.Bit, IsNumber: true),
                new(words.BitOffset, IsNumber: true),
                new(words.Type),
                new(words.Range),
                new(words.Unit),
                new(words.OneCount, IsNumber: true),
                new(words.Direction),
                new(words.LiveWhen),
            ],
            [.. SignalList.Of(context.Fitted).Select(signal => RowOf(context, live, signal))]
        );
    }

    private static Row RowOf(ConfigurationContext context, LiveWhen live, Signal signal)
    {
        var item = signal.Item;
        return new(
            [
                signal.Tag,
                Say(context, signal),
                context.In(signal.Instance.Fit.Purpose),
                context.Names.Of(signal.Instance),
                PortOf(context, signal),
                item is null ? "" : DocumentContext.Print(item.Octet),
                item is null ? "" : DocumentContext.Print(item.Bit),
                item is null || signal.Data is null ? "" : DocumentContext.Print(item.BitOffset(Octets(signal))),
                SignalTypes.Of(signal),
                ProcessDataTable.Range(item),
                ProcessDataTable.Unit(item),
                item?.Range.Step?.ToString() ?? "",
                context.Words.Of(signal.Kind),
                live.Of(signal.Instance) ?? context.Words.AlwaysLive,
            ],
            signal.Kind is SignalKind.SafetyInput or SignalKind.SafetyOutput ? "safety" : ""
        );
    }

    public static string Say(ConfigurationContext context, Signal signal) =>
        signal.Title is { } title ? context.In(title)
        : signal.RawOctets > 0 ? context.Words.RawSignal
        : signal.Kind is SignalKind.SafetyInput or SignalKind.SafetyOutput ? context.Words.SafetySignal
        : signal.Name == SignalNames.PinTwo ? context.Words.SecondSignal
        : context.Words.PlainSignal;

    /// <summary>The port of a master where it arrives; behind a hub, that of the hub too; at the box, its
    /// terminals.</summary>
    public static string PortOf(ConfigurationContext context, Signal signal)
    {
        if (signal.MasterPort is not { } port)
        {
            return InBox(context, signal);
        }

        var machine = context.Engineered.Machine;
        var at = context.Names.Port(machine, port with { IsPinTwo = false });
        return signal.Hub is not null ? $"{at}, {context.Names.Port(machine, signal.Home)}"
            : signal.Pin is { } pin ? FormattableString.Invariant($"{at} pin {pin}")
            : at;
    }

    private static string InBox(ConfigurationContext context, Signal signal)
    {
        var place = new BoxWays(context).On(signal.Instance, TargetOf(signal.Kind), signal.Nth);
        return place.Length > 0 ? place : context.Names.TerminalsOf(signal.Instance);
    }

    private static CoreTarget TargetOf(SignalKind kind) =>
        kind switch
        {
            SignalKind.FastInput => CoreTarget.FastInput,
            SignalKind.BoxInput => CoreTarget.Input,
            SignalKind.BoxOutput => CoreTarget.Output,
            SignalKind.SafetyInput => CoreTarget.SafetyInput,
            SignalKind.SafetyOutput => CoreTarget.SafetyOutput,
            _ => CoreTarget.Unsaid,
        };

    private static int Octets(Signal signal) =>
        signal.Kind == SignalKind.Output ? signal.Data!.OutputOctets : signal.Data!.InputOctets;
}
