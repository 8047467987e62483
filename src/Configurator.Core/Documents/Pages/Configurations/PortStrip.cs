using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>A master or hub as a numbered strip of sockets, each with the name of what is plugged in.</summary>
internal static class PortStrip
{
    private const int PitchX = 118;
    private const int Left = 10;
    private const int SocketY = 52;
    private const int Height = 138;

    public static Drawing Of(ConfigurationContext context, Carrier carrier)
    {
        var plugged = context.Fitted.PluggedInto(carrier.Name).ToLookup(pair => pair.Home.Port, pair => pair.Instance);
        var ports = carrier.Device.Ports!.Numbers.ToList();
        var title = $"{context.Words.PortMap}: {carrier.Designation(context.Names)}";
        var words = string.Join(
            "; ",
            ports.Select(port => FormattableString.Invariant($"{port}: {Name(context, plugged[port])}"))
        );
        var width = (2 * Left) + (PitchX * Math.Max(1, ports.Count));
        return new(
            $"strip-{carrier.Name}",
            title,
            words,
            width,
            Height,
            [
                new Box(2, 2, width - 4, Height - 4, "housing"),
                .. ports.SelectMany(
                    (port, i) => Socket(context, carrier, port, Left + (PitchX * i) + (PitchX / 2), plugged[port])
                ),
            ]
        );
    }

    private static IEnumerable<Shape> Socket(
        ConfigurationContext context,
        Carrier carrier,
        int port,
        int x,
        IEnumerable<FitInstance> plugged
    )
    {
        var portClass = carrier.Device.Ports!.ClassOf(port)!.Value;
        yield return new Label(
            x,
            24,
            FormattableString.Invariant($"{port} {WordLists.Of(portClass)}"),
            "middle",
            "number"
        );
        if (portClass == PortClass.B)
        {
            yield return new Box(x - 21, SocketY - 21, 42, 42, "class-b");
        }

        yield return new Ring(x, SocketY, 16, plugged.Any() ? "plugged" : "open");
        var name = Name(context, plugged);
        var dash = name.IndexOf('-', StringComparison.Ordinal);
        yield return new Label(x, 92, dash > 0 ? name[..dash] : name, "middle", "name");
        yield return new Label(x, 107, dash > 0 ? name[dash..] : "", "middle", "name");
        yield return new Label(
            x,
            126,
            string.Join(
                ' ',
                plugged.Select(instance => context.Names.Of(instance.Station)).Distinct(StringComparer.Ordinal)
            ),
            "middle",
            "place"
        );
    }

    private static string Name(ConfigurationContext context, IEnumerable<FitInstance> plugged) =>
        plugged.Any() ? string.Join(" + ", plugged.Select(context.Names.Of)) : "–";
}
