using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What a wireman builds from: moulded cables first, then the ends wired by hand, core by core.</summary>
internal static class WiringDocument
{
    public static ConfigurationDocument Document { get; } =
        new("wiring", "WT", words => words.Wiring, words => words.WiringLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var (words, cables) = (context.Words, CableList.Of(context));
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Wiring(words))]);
        yield return new("plug-list", words.PlugList, [new Paragraph(words.PlugListLead), PlugList(context, cables)]);
        yield return new(
            "terminations",
            words.TerminationList,
            [new Paragraph(words.TerminationLead), Terminations(context, cables)]
        );
        yield return new(
            "inside",
            words.InsideBox,
            [
                new Paragraph(words.InsideLead),
                new Paragraph(words.InsideElsewhere(context.Fitted.Machine.Control.Box.Diagram)),
                InsideTable.Of(context),
            ]
        );
        yield return new(
            "trunk-socket",
            words.TrunkSocket,
            [new Paragraph(words.TrunkSocketLead), Socket(context, cables)]
        );
        var notes = NotesByOption.On(context, NoteSubject.Wiring);
        if (!notes.IsEmpty)
        {
            yield return new("notes", words.WiringNotes, notes);
        }
    }

    private static Table PlugList(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "plug-list",
            words.PlugList,
            [
                new(words.Cable),
                new(words.From),
                new(words.FromPlug),
                new(words.To),
                new(words.ToPlug),
                new(words.PortClass),
                new(words.Type),
                new(words.Length, IsNumber: true),
                new(words.Torque, IsNumber: true),
                new(words.LabelText),
            ],
            [.. cables.Where(cable => cable.Cordset is not null).Select(cable => PlugRow(context, cable))]
        );
    }

    private static Row PlugRow(ConfigurationContext context, CableEntry cable) =>
        Row.Of(
            CableWords.Link(context, cable),
            CableWords.End(context, cable.From),
            CableWords.Plug(context, cable.From),
            CableWords.End(context, cable.To),
            CableWords.Plug(context, cable.To),
            CableWords.PortClass(context, cable),
            context.Links.Device(cable.Cordset!),
            CableWords.Length(context, cable),
            CableWords.Torque(context, cable),
            CableWords.Label(cable)
        );

    private static Table Terminations(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "termination-list",
            words.TerminationList,
            [
                new(words.Wire),
                new(words.AtBox),
                new(words.Colour),
                new(words.CrossSection, IsNumber: true),
                new(words.Ferrule),
                new(words.Carries),
                new(words.ToItem),
                new(words.AtDevice),
                new(words.BoxTerminal),
                new(words.LeadsOn),
                new(words.Strip, IsNumber: true),
            ],
            [.. cables.Where(IsByHand).SelectMany(cable => Ends(context, cable))]
        );
    }

    private static bool IsByHand(CableEntry cable) => cable.From.Plug is null || cable.To.Plug is null;

    private static IEnumerable<Row> Ends(ConfigurationContext context, CableEntry cable)
    {
        if (cable.Cores.IsEmpty)
        {
            return
            [
                Row.Of(
                    cable.Name,
                    cable.From.Item,
                    "",
                    "",
                    "",
                    context.Words.AsDataSheet,
                    cable.To.Item,
                    "",
                    "",
                    "",
                    ""
                ),
            ];
        }

        var ways = new BoxWays(context);
        var cores = cable.Cores.Select(core =>
            Row.Of(
                CableWords.Wire(cable, core),
                AtBox(ways, cable, core),
                core.IsColour ? new Cell([new(core.Mark)], Swatch: core.Mark) : core.Mark,
                context.Documents.Print(core.Conductor ?? cable.Conductor),
                core.IsUsed ? Ferrules.For(core.Conductor ?? cable.Conductor) : "",
                core.IsUsed ? core.Carries : $"{core.Carries}: {context.Words.FoldBack}",
                cable.To.Item,
                cable.To.Plug is null ? core.To : $"{context.Words.MouldedPin} {core.To}",
                cable.IsStraight(core) ? context.Words.TerminalOfFeeder
                    : core.IsUsed ? TorqueOf(context)
                    : "",
                cable.IsStraight(core) ? context.Words.EndsThere : ways.OnFrom(cable, core),
                core.IsUsed ? Ferrules.StripFor(core.Conductor ?? cable.Conductor) : ""
            )
        );
        return cable.Leads is { IsShielded: true } ? cores.Append(Shield(context, cable)) : cores;
    }

    private static string AtBox(BoxWays ways, CableEntry cable, CableCore core) =>
        cable.IsStraight(core) ? ways.OnFrom(cable, core)
        : core.IsUsed || cable.From.Plug is not null ? core.From
        : "";

    private static Row Shield(ConfigurationContext context, CableEntry cable) =>
        Row.Of(
            $"{cable.Name}/{context.Words.Shield}",
            context.Words.ShieldClamp,
            "",
            "",
            "",
            context.Words.Shield,
            cable.To.Item,
            CableWords.ShieldAtDevice(context.Words, cable),
            "",
            context.Words.EarthBar,
            ""
        );

    /// <summary>Of the terminals in the box.</summary>
    private static string TorqueOf(ConfigurationContext context) =>
        context.Fitted.Machine.Control.Box.TerminalTorque is { } torque
            ? context.Documents.Print(torque)
            : context.Words.SpringTerminal;

    private static Table Socket(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "trunk-socket",
            words.TrunkSocket,
            [
                new(words.Terminal),
                new(words.Colour),
                new(words.Carries),
                new(words.Protection),
                new(words.DroppedBy),
                new(words.Cable),
            ],
            [
                .. cables
                    .Where(cable => cable.Run is Engineering.Ports.TrunkCable { Previous: null })
                    .SelectMany(cable => cable.Cores.Select(core => SocketRow(context, cable, core))),
            ]
        );
    }

    private static Row SocketRow(ConfigurationContext context, CableEntry cable, CableCore core)
    {
        var circuit = cable.Run is Engineering.Ports.TrunkCable { IsPower: true }
            ? CircuitOf(context, core.Number)
            : null;
        return Row.Of(
            FormattableString.Invariant($"{cable.From.Item}:{core.Number}"),
            new Cell([new(core.Mark)], Swatch: core.Mark),
            core.Carries,
            circuit is null ? "" : context.Documents.Print(circuit.Protection),
            circuit is null ? "" : context.DroppedBy(circuit),
            cable.Name
        );
    }

    /// <summary>Only what is live is protected and dropped.</summary>
    private static FieldCircuit? CircuitOf(ConfigurationContext context, int pin) =>
        pin switch
        {
            1 => Find(context, CircuitUse.SensorSupply),
            4 => Find(context, CircuitUse.ActuatorSupply),
            _ => null,
        };

    private static FieldCircuit? Find(ConfigurationContext context, CircuitUse use) =>
        context.Fitted.Machine.Control.Power?.Circuits.FirstOrDefault(circuit => circuit.Feeds == use);
}
