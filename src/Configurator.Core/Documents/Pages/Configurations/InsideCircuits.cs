using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Wires of the 24 V circuits inside the box. A channel protects what follows it, and contacts drop what
/// follows them: what comes before stays alive.</summary>
internal static class InsideCircuits
{
    public static IEnumerable<Row> Of(ConfigurationContext context) =>
        (context.Fitted.Machine.Control.Power?.Circuits ?? [])
            .SelectMany(circuit => OfCircuit(context, circuit))
            .Concat(OfBox(context))
            .DistinctBy(row => (row.Cells[0].Text, row.Cells[1].Text));

    /// <summary>Out by way of breaker and contacts to its pin of the trunk socket, and straight back.</summary>
    private static IEnumerable<Row> OfCircuit(ConfigurationContext context, FieldCircuit circuit)
    {
        var ways = new BoxWays(context);
        var (live, back) = TrunkPins.PinsOf(circuit.Feeds);
        var socket = context.Names.TrunkSocket(isPower: true);
        var channel = ways.ChannelOf(circuit.Channel?.Value);
        var start = channel.Length > 0 ? channel : ways.SupplyOf(circuit, "+");
        var (into, outOf) = ContactsOf(context, circuit);
        (string From, string To)[] wires =
            into.Length > 0
                ? [(start, into), (outOf, $"{socket}:{DocumentContext.Print(live)}")]
                : [(start, $"{socket}:{DocumentContext.Print(live)}")];
        return
        [
            .. Feed(context, circuit, circuit.Channel?.Value),
            .. wires
                .Where(wire => wire.From.Length > 0)
                .Select(
                    (wire, i) =>
                        Row.Of(
                            wire.From,
                            wire.To,
                            TrunkPins.Of(isPower: true, live),
                            context.Documents.Print(circuit.Protection),
                            i == wires.Length - 1 ? context.DroppedBy(circuit) : context.Words.StaysAlive
                        )
                ),
            Row.Of(
                ways.SupplyOf(circuit, "-"),
                $"{socket}:{DocumentContext.Print(back)}",
                TrunkPins.Of(isPower: true, back),
                "",
                ""
            ),
        ];
    }

    /// <summary>Where the circuit enters and leaves what drops it; empty where nothing does.</summary>
    private static (string Into, string OutOf) ContactsOf(ConfigurationContext context, FieldCircuit circuit)
    {
        if (new BoxWays(context).Standard(circuit.SwitchedBy?.Value) is not { } contacts)
        {
            return ("", "");
        }

        var name = context.Names.Of(contacts);
        return contacts.Device.Contacts is { } at ? ($"{name}:{at.In}", $"{name}:{at.Out}") : (name, name);
    }

    /// <summary>What is wired directly into the box is fed by a channel of its own.</summary>
    private static IEnumerable<Row> OfBox(ConfigurationContext context)
    {
        var (words, ways, box) = (context.Words, new BoxWays(context), context.Fitted.Machine.Control.Box);
        var inside = box.InsideChannel?.Value is { } own ? Feed(context, ways.CircuitOn(own), own) : [];
        return ways.ChannelOf(box.Channel?.Value) is { Length: > 0 } channel
            ?
            [
                .. Feed(context, ways.CircuitOn(box.Channel!.Value.Value), box.Channel.Value.Value),
                Row.Of(
                    channel,
                    words.DirectTerminals,
                    words.BoxSupply,
                    context.Documents.Print(box.Protection),
                    words.StaysAlive
                ),
                .. inside,
            ]
            : inside;
    }

    /// <summary>From the supply to the module of a channel: its breakers protect nothing before them.</summary>
    private static IEnumerable<Row> Feed(ConfigurationContext context, FieldCircuit? circuit, BreakerChannel? channel)
    {
        var ways = new BoxWays(context);
        return ways.SupplyOf(circuit, "+") is { Length: > 0 } supply && ways.ModuleOf(channel) is { Length: > 0 } module
            ? [Row.Of(supply, $"{module}:+", context.Words.ModuleFeed, "", context.Words.StaysAlive)]
            : [];
    }
}
