using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Wires inside the box: supply, breaker, contacts, trunk socket; every terminal of what is mounted there;
/// the network.</summary>
internal static class InsideTable
{
    public static Table Of(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "inside-box",
            words.InsideBox,
            [
                new(words.From),
                new(words.To),
                new(words.Carries),
                new(words.Protection, IsNumber: true),
                new(words.DroppedBy),
            ],
            [.. InsideCircuits.Of(context), .. InsideTerminals.Of(context), .. Network(context)]
        );
    }

    /// <summary>From the switch to sockets in the wall of the box.</summary>
    private static IEnumerable<Row> Network(ConfigurationContext context)
    {
        var ways = new BoxWays(context);
        var trunk = context.Fitted.Masters.IsEmpty
            ? []
            : new[] { (From: ways.OnSwitch(NetworkOffer.TrunkPort), To: context.Names.TrunkSocket(isPower: false)) };
        return trunk
            .Concat(
                context
                    .Fitted.Fitted.Where(instance => instance.Fit.HasNetwork)
                    .Select(instance => (From: ways.NetworkPort(instance), To: context.Names.NetworkSocketOf(instance)))
            )
            .Where(cable => cable.From.Length > 0)
            .Select(cable => Row.Of(cable.From, cable.To, context.Words.NetworkCable, "", ""));
    }
}
