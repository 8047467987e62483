using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What a wireman builds from: moulded cables first, then the few ends wired by hand.</summary>
internal static class WiringDocument
{
    public static ConfigurationDocument Document { get; } =
        new("wiring", "WT", words => words.Wiring, _ => "", Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Wiring(words))]);
        yield return new("plug-list", words.PlugList, [new Paragraph(words.PlugListLead), PlugList(context)]);
        yield return new("field-wired", words.FieldWired, [new Paragraph(words.FieldWiredLead), FieldWired(context)]);
        yield return new("cut", words.CutCables, [new Paragraph(words.CutLead), Cut(context)]);
        var notes = NotesByOption.On(context, NoteSubject.Wiring);
        if (!notes.IsEmpty)
        {
            yield return new("notes", words.WiringNotes, notes);
        }
    }

    private static Table PlugList(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "plug-list",
            words.PlugList,
            [
                new(words.Cable),
                new(words.From),
                new(words.Plug),
                new(words.To),
                new(words.Location),
                new(words.Plug),
                new(words.Type),
                new(words.Length, IsNumber: true),
                new(words.Needed, IsNumber: true),
            ],
            [.. Ordered(context).Where(cable => cable.Cordset is not null).Select(cable => PlugRow(context, cable))]
        );
    }

    /// <summary>Trunk first, then master by master and port by port, then what goes straight to the box.</summary>
    private static IEnumerable<CableRun> Ordered(ConfigurationContext context)
    {
        var carriers = PortMapDocument.Carriers(context.Fitted).Select(carrier => carrier.Name).ToList();
        return context
            .Engineered.Report.Cables.OrderBy(cable =>
                cable switch
                {
                    TrunkCable => -1,
                    DeviceCable { Home.Master: { } master } => carriers.IndexOf(master),
                    _ => int.MaxValue,
                }
            )
            .ThenBy(cable => cable is DeviceCable device ? device.Home.Port : 0);
    }

    private static Row PlugRow(ConfigurationContext context, CableRun cable)
    {
        var isOpen = cable.Cordset!.FarPlug is null or "none" or "terminals";
        return Row.Of(
            CableName(context, cable),
            FromName(context, cable),
            isOpen ? context.Words.FieldWired : PlugText(cable.Cordset.FarPlug!),
            ToName(context, cable),
            $"{context.Names.Of(cable.To)}, {context.In(cable.To.Title)}",
            PlugText(cable.Cordset.Plug),
            context.Links.Device(cable.Cordset),
            context.Documents.Print(cable.Stock),
            cable.Needed?.ToString() ?? ""
        );
    }

    private static string CableName(ConfigurationContext context, CableRun cable) =>
        cable switch
        {
            DeviceCable device => context.Names.CableOf(device.Instance),
            TrunkCable trunk => context.Names.TrunkCableOf(trunk.Next, trunk.IsPower),
            _ => "",
        };

    private static string FromName(ConfigurationContext context, CableRun cable) =>
        cable switch
        {
            DeviceCable { Home.IsDirect: true } device =>
                $"{context.Names.Of(cable.From)} {context.Names.TerminalsOf(device.Instance)}",
            DeviceCable device => context.Names.Port(context.Engineered.Machine, device.Home),
            TrunkCable { Previous: { } previous } => context.Names.Of(previous),
            _ => context.Names.Of(cable.From),
        };

    private static string ToName(ConfigurationContext context, CableRun cable) =>
        cable switch
        {
            DeviceCable device => context.Names.Of(device.Instance),
            TrunkCable trunk => context.Names.Of(trunk.Next),
            _ => "",
        };

    /// <summary><c>m12-a-4</c> to <c>M12 A 4-pole</c>.</summary>
    private static string PlugText(string plug) =>
        plug.Split('-') switch
        {
            ["m12", var coding, var poles] => $"M12 {coding.ToUpperInvariant()} {poles}-pole",
            ["m8", var poles] => $"M8 {poles}-pole",
            _ => plug,
        };

    private static Table FieldWired(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "field-wired",
            words.FieldWired,
            [
                new(words.Cable),
                new(words.Terminal),
                new(words.Pin),
                new(words.Colour),
                new(words.Signal),
                new(words.To),
            ],
            [
                .. Ordered(context)
                    .OfType<DeviceCable>()
                    .Where(cable => cable.Home.IsDirect && cable.Cordset?.Cordset is not null)
                    .SelectMany(cable => Cores(context, cable)),
            ]
        );
    }

    private static IEnumerable<Row> Cores(ConfigurationContext context, DeviceCable cable)
    {
        var device = cable.Instance.Device;
        var hasPins = PinSignals.IsFor(device);
        return cable.Cordset!.Cordset!.Cores.Select(
            (colour, i) =>
                Row.Of(
                    context.Names.CableOf(cable.Instance),
                    FormattableString.Invariant($"{context.Names.TerminalsOf(cable.Instance)}:{i + 1}"),
                    hasPins ? DocumentContext.Print(i + 1) : "",
                    new Cell([new(colour)], Swatch: colour),
                    hasPins ? PinSignals.Of(device, i + 1) : context.Words.AsDataSheet,
                    context.Names.Of(cable.Instance)
                )
        );
    }

    private static Table Cut(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "cut",
            words.CutCables,
            [
                new(words.Cable),
                new(words.From),
                new(words.To),
                new(words.Location),
                new(words.Device),
                new(words.Length, IsNumber: true),
            ],
            [
                .. Ordered(context)
                    .OfType<DeviceCable>()
                    .Where(cable => cable.Cordset is null)
                    .Select(cable =>
                        Row.Of(
                            CableName(context, cable),
                            FromName(context, cable),
                            ToName(context, cable),
                            $"{context.Names.Of(cable.To)}, {context.In(cable.To.Title)}",
                            context.Links.Device(cable.Instance.Device),
                            CutLength(cable.Needed)
                        )
                    ),
            ]
        );
    }

    /// <summary>Cut to the next half metre.</summary>
    private static string CutLength(Micrometres? needed)
    {
        const long HalfMetre = 500_000;
        return needed is { } length
            ? new Micrometres((length.Value + HalfMetre - 1) / HalfMetre * HalfMetre).ToString()
            : "";
    }
}
