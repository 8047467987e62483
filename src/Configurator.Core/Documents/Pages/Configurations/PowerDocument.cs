using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What supplies and trunk carry, what arrives at each master, and which stop drops what.</summary>
internal static class PowerDocument
{
    public static ConfigurationDocument Document { get; } =
        new("power", "PW", words => words.Power, words => words.PowerLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        if (context.Fitted.Machine.Control.Power is not { } power)
        {
            yield return new("circuits", words.Circuits, [new Paragraph(words.PowerNotStated)]);
            yield break;
        }

        var findings = context.Engineered.Report.Findings.Where(finding => PowerRules.All.Contains(finding.Rule));
        yield return new(
            "limits",
            words.ShareUsed,
            [.. new Block?[] { LimitBars.Of("limit-bars", words, findings, Name) }.OfType<Block>()]
        );
        yield return new("circuits", words.Circuits, [Circuits(context, power)]);
        yield return new(
            "trunk",
            words.AlongTheTrunk,
            [.. power.Circuits.Select(circuit => AlongTheTrunk(context, power, circuit))]
        );
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Wiring(words))]);

        static string Name(Finding finding) => $"{finding.Rule.Title}: {finding.About}";
    }

    private static Table Circuits(ConfigurationContext context, FieldPower power)
    {
        var words = context.Words;
        return new(
            "circuits",
            words.Circuits,
            [
                new(words.Circuit),
                new(words.Feeds),
                new(words.Supply),
                new(words.Protection, IsNumber: true),
                new(words.DroppedBy),
            ],
            [
                .. power.Circuits.Select(circuit =>
                    Row.Of(
                        circuit.Name.Value,
                        words.FeedOf(circuit.Feeds),
                        SupplyOf(context, circuit),
                        context.Documents.Print(circuit.Protection),
                        context.DroppedBy(circuit)
                    )
                ),
                .. BoxChannels(context),
            ]
        );
    }

    /// <summary>24 V for what is wired to the box and mounted inside it.</summary>
    private static IEnumerable<Row> BoxChannels(ConfigurationContext context)
    {
        var (words, ways, box) = (context.Words, new BoxWays(context), context.Fitted.Machine.Control.Box);
        return new[]
        {
            (Channel: box.Channel, box.Protection, Feeds: words.DirectTerminals),
            (Channel: box.InsideChannel, Protection: box.InsideProtection, Feeds: words.InsideDevices),
        }
            .Where(own => own.Channel is not null)
            .Select(own =>
                Row.Of(
                    ways.ChannelOf(own.Channel!.Value.Value),
                    own.Feeds,
                    ways.CircuitOn(own.Channel.Value.Value) is { } circuit ? SupplyOf(context, circuit) : "",
                    context.Documents.Print(own.Protection),
                    words.StaysAlive
                )
            );
    }

    private static string SupplyOf(ConfigurationContext context, FieldCircuit circuit) =>
        context.Fitted.Fitted.FirstOrDefault(instance =>
            instance.Option is null && instance.Fit.Name.Value.Value == circuit.Supply.Value
        )
            is { } supply
            ? context.Names.Of(supply)
            : circuit.Supply.Value;

    private static Table AlongTheTrunk(ConfigurationContext context, FieldPower power, FieldCircuit circuit)
    {
        var words = context.Words;
        var fed = FedCircuit.Of(context.Fitted, power, circuit);
        return new(
            $"trunk-{circuit.Name.Value}",
            $"{words.AlongTheTrunk}: {circuit.Name.Value}",
            [
                new(words.Master),
                new(words.Location),
                new(words.Stretch, IsNumber: true),
                new(words.CurrentHere, IsNumber: true),
                new(words.VoltsHere, IsNumber: true),
            ],
            [
                .. fed.Masters.Select(
                    (master, i) =>
                        Row.Of(
                            context.Names.Of(master),
                            $"{context.Names.Of(master.Station)}, {context.In(master.Station.Title)}",
                            $"{new Measure(fed.Feed.Lengths[i], "m")}",
                            fed.Solved is null ? "" : $"{new Measure(fed.Solved.Amperes[i], "A")}",
                            fed.Solved is null ? words.Impossible : $"{fed.Solved.Volts[i].ToString(2)} V"
                        )
                ),
            ]
        );
    }
}
