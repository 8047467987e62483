using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Cables;

/// <summary>How cables and their ends are printed, the same in every list.</summary>
internal static class CableWords
{
    /// <summary>From the wiring table to the cable's row in the schedule.</summary>
    public static Link Link(ConfigurationContext context, CableEntry cable) =>
        new(
            cable.Name,
            PagePaths.Relative(context.Links.Path, PagePaths.Of(context.Engineered.Published, CablesDocument.Name))
                + "#"
                + cable.Anchor
        );

    public static string Place(ConfigurationContext context, Station station) =>
        $"{context.Names.Of(station)}, {context.In(station.Title)}";

    /// <summary>The nodes of the cable path, from box or master to device; empty where both ends drop from one
    /// node.</summary>
    public static string Way(ConfigurationContext context, CableEntry cable) =>
        context.Fitted.Machine.Route.Way(cable.From.Station.Node, cable.To.Station.Node) is { Length: > 1 } way
            ? string.Join(" > ", way)
            : "";

    /// <summary>Which lane it serves where its fit has one device a lane; else which of how many; empty of a single
    /// one.</summary>
    public static string Lane(ConfigurationContext context, CableEntry cable)
    {
        if (cable.Instance is not { } instance)
        {
            return "";
        }

        var machine = context.Fitted.Machine;
        var all = instance.Fit.StationsOn(machine.Id.Value).Length;
        return all < 2 ? ""
            : all == machine.Lanes ? DocumentContext.Print(instance.Key.Ordinal)
            : $"{context.Words.NumberSign} {DocumentContext.Print(instance.Key.Ordinal)} {context.Words.OfHowMany} {DocumentContext.Print(all)}";
    }

    /// <summary>Of the port that it is plugged into; empty where that is no port.</summary>
    public static string PortClass(ConfigurationContext context, CableEntry cable) =>
        cable.Run is DeviceCable device && Cabling.ClassOf(context.Fitted.Machine, device.Home) is { } offered
            ? WordLists.Of(offered)
            : "";

    /// <summary>The socket or the gland by which it enters the box; empty of a cable that does not.</summary>
    public static string Entry(CableEntry cable) =>
        cable.Run is TrunkCable { Previous: null } or NetworkCable ? cable.From.Item
        : cable.From.Plug is null ? Glands.For(cable.Diameter)
        : "";

    /// <summary>Location and item: <c>+INFEEDFRAME =FRONT-KF1:3</c>.</summary>
    public static string End(ConfigurationContext context, CableEnd end) =>
        $"{context.Names.Of(end.Station)} {end.Item}";

    /// <summary><c>M12 A 4-pole socket, straight</c>.</summary>
    public static string Plug(ConfigurationContext context, CableEnd end) =>
        end.Plug is { } plug
            ? $"{Kind(context.Words, plug.Kind)} {(plug.IsSocket ? context.Words.Sleeves : context.Words.Pins)}, {(plug.Form == PlugForm.Angled ? context.Words.Angled : context.Words.Straight)}"
            : context.Words.ByHand;

    /// <summary><c>M12 A 4-pole</c>; pins or sleeves and form stand in the plug list.</summary>
    public static string Connector(ConfigurationContext context, CableEnd end) =>
        end.Plug is { } plug ? Kind(context.Words, plug.Kind) : context.Words.ByHand;

    public static string Torque(ConfigurationContext context, CableEntry cable) =>
        context.Documents.Print(cable.From.Plug?.Torque ?? cable.To.Plug?.Torque);

    /// <summary>A stock length, or the length to cut.</summary>
    public static string Length(ConfigurationContext context, CableEntry cable) =>
        cable.Run.Stock is { } stock ? context.Documents.Print(stock) : cable.Cut?.ToString() ?? "";

    /// <summary>Material of a jacket, and whether there is a shield below it.</summary>
    public static string Jacket(SiteWords words, string material, Leads? leads) =>
        leads is { IsShielded: true } ? $"{material}, {words.Shield}" : material;

    /// <summary>What is laid together: power apart from the rest.</summary>
    /// <remarks>Source: separation of power and signal cables, IEC 61000-5-2 and EN 50174-2 (from memory);
    /// common practice.</remarks>
    public static string Group(SiteWords words, CableEntry cable) =>
        cable.Run is NetworkCable or TrunkCable { IsPower: false } ? words.GroupNetwork
        : cable.IsPower ? words.GroupPower
        : words.GroupControl;

    /// <summary>A motor cable is shielded at both ends, any other at the box alone.</summary>
    /// <remarks>Source: common practice, no source; the maker of drive or device decides.</remarks>
    public static string ShieldAtDevice(SiteWords words, CableEntry cable) =>
        cable.Instance?.Device.Kind == DeviceKind.Motor ? words.ShieldAtDevice : words.ShieldFolded;

    /// <summary><c>1.5 mm²</c>, or where cores differ <c>4 × 1.5 mm² + 2 × 0.25 mm²</c>, in the order of the
    /// cores.</summary>
    public static string Sizes(ConfigurationContext context, Quantity? usual, IEnumerable<Quantity?> cores)
    {
        var sizes = cores
            .Select(own => context.Documents.Print(own ?? usual))
            .GroupBy(size => size, StringComparer.Ordinal)
            .ToList();
        return sizes.Count < 2
            ? context.Documents.Print(usual)
            : string.Join(" + ", sizes.Select(size => $"{DocumentContext.Print(size.Count())} × {size.Key}"));
    }

    /// <summary>What is printed on the label at either end.</summary>
    public static string Label(CableEntry cable) => $"{cable.Name} / {cable.From.Item} / {cable.To.Item}";

    public static string Wire(CableEntry cable, CableCore core) =>
        string.Create(CultureInfo.InvariantCulture, $"{cable.Name}/{core.Number}");

    /// <summary><c>m12-a-4</c> to <c>M12 A 4-pole</c>.</summary>
    public static string Kind(SiteWords words, string plug) =>
        plug.Split('-') switch
        {
            ["m12", var coding, var poles] => $"M12 {coding.ToUpperInvariant()} {poles}{words.Poles}",
            ["m8", var poles] => $"M8 {poles}{words.Poles}",
            _ => plug,
        };
}
