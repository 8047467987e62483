using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every terminal of what is mounted inside the box, with what it is wired to: signals run from sender to
/// receiver.</summary>
internal static class InsideTerminals
{
    public static IEnumerable<Row> Of(ConfigurationContext context) =>
        context
            .Fitted.Fitted.Where(instance => instance.Fit.Wiring == Wiring.Inside)
            .OrderBy(instance => instance.Option is not null)
            .SelectMany(instance => Of(context, instance));

    private static IEnumerable<Row> Of(ConfigurationContext context, FitInstance instance)
    {
        var ways = new BoxWays(context);
        var terminals = TerminalsOf(context.Words, instance.Device);
        return terminals
            .Select(
                (terminal, i) =>
                    (
                        Terminal: terminal,
                        Other: terminal.LinkedTo.Length > 0
                            ? $"{context.Names.Of(instance)}:{terminal.LinkedTo}"
                            : ways.On(
                                instance,
                                terminal.LeadsTo,
                                terminals[..(i + 1)].Count(before => before.LeadsTo == terminal.LeadsTo)
                            )
                    )
            )
            .Where(wire => wire.Other.Length > 0)
            .Select(wire => RowOf(context, instance, wire.Terminal, wire.Other));
    }

    private static Row RowOf(ConfigurationContext context, FitInstance instance, Terminal terminal, string other)
    {
        var name = context.Names.Of(instance);
        var own = terminal.At.Length > 0 ? $"{name}:{terminal.At}" : name;
        var isSender =
            terminal.LinkedTo.Length > 0
            || terminal.LeadsTo is CoreTarget.SafetyInput or CoreTarget.Input or CoreTarget.FastInput;
        return Row.Of(
            isSender ? own : other,
            isSender ? other : own,
            terminal.Carries,
            terminal.LeadsTo == CoreTarget.Supply ? context.Documents.Print(ProtectionOf(context)) : "",
            DroppedBy(context, instance, terminal.LeadsTo)
        );
    }

    private static Model.Units.Quantity? ProtectionOf(ConfigurationContext context)
    {
        var box = context.Fitted.Machine.Control.Box;
        return box.InsideChannel is null ? box.Protection : box.InsideProtection;
    }

    private static string DroppedBy(ConfigurationContext context, FitInstance instance, CoreTarget target) =>
        target switch
        {
            CoreTarget.TorqueOff => context.DroppedBy(new BoxWays(context).TorqueOff?.Fit.DroppedBy ?? []),
            CoreTarget.SafetyOutput => context.DroppedBy(instance.Fit.DroppedBy),
            CoreTarget.Supply => context.Words.StaysAlive,
            _ => "",
        };

    /// <summary>Where a device states no terminals: the channels that it needs of the box.</summary>
    private static ImmutableArray<Terminal> TerminalsOf(SiteWords words, Device device) =>
        device.Terminals.IsEmpty
            ?
            [
                .. Channels(device.Safety?.Outputs ?? 0, words.SafetyChannel, CoreTarget.SafetyOutput),
                .. Channels(device.Safety?.Inputs ?? 0, words.FeedbackChannel, CoreTarget.SafetyInput),
            ]
            : device.Terminals;

    private static IEnumerable<Terminal> Channels(int count, string carries, CoreTarget target) =>
        Enumerable
            .Range(1, count)
            .Select(n => new Terminal("", string.Create(CultureInfo.InvariantCulture, $"{carries} {n}"), target));
}
