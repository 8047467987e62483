using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Every safety device with the inputs and outputs it takes of the box, and which circuits a stop
/// drops.</summary>
internal static class SafetyDocument
{
    public static ConfigurationDocument Document { get; } =
        new("safety", "SW", words => words.SafetyWiring, words => words.SafetyLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        var counts = context.Engineered.Report.Findings.Where(finding => SafetyChecks.All.Contains(finding.Rule));
        yield return new(
            "devices",
            words.SafetyDevices,
            [
                .. new Block?[]
                {
                    LimitBars.Of("limit-bars", words, counts, finding => finding.Rule.Title),
                }.OfType<Block>(),
                Devices(context),
            ]
        );
        if (context.Fitted.Machine.Control.Power is { } power)
        {
            yield return new(
                "stops",
                words.StopFunctions,
                [
                    Stops(context, power),
                    new Paragraph(words.StopMatrixLead),
                    StopMatrix.Of(context),
                    StopMatrix.Givers(context),
                ]
            );
        }

        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Safety(words))]);
    }

    private static Table Devices(ConfigurationContext context)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        return new(
            "safety-devices",
            words.SafetyDevices,
            [
                new(words.Designation),
                new(words.Device),
                new(words.Station),
                new(words.Purpose),
                new(words.SafetyInputs, IsNumber: true),
                new(words.SafetyOutputs, IsNumber: true),
                new(words.TestPulses),
                new(words.Terminal),
                new(words.InputsAt),
                new(words.OutputsAt),
            ],
            [
                .. SafetyChecks
                    .Needing(context.Fitted)
                    .Select(pair =>
                        Row.Of(
                            context.Names.Of(pair.Instance),
                            context.Links.Device(pair.Instance.Device),
                            context.In(pair.Instance.Station.Title),
                            context.In(pair.Instance.Fit.Purpose),
                            DocumentContext.Print(pair.Needs.Inputs),
                            DocumentContext.Print(pair.Needs.Outputs),
                            Pulses(words, pair.Needs.Pulses),
                            pair.Instance.Fit.Wiring == Wiring.Inside ? "" : context.Names.TerminalsOf(pair.Instance),
                            ways.Inputs(pair.Instance),
                            ways.Outputs(pair.Instance)
                        )
                    ),
            ]
        );
    }

    private static Table Stops(ConfigurationContext context, FieldPower power)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        return new(
            "stops",
            words.StopFunctions,
            [new(words.Circuit), new(words.Feeds), new(words.DroppedBy), new(words.SwitchedBy)],
            [
                .. power.Circuits.Select(circuit =>
                    Row.Of(
                        circuit.Name.Value,
                        words.FeedOf(circuit.Feeds),
                        context.DroppedBy(circuit),
                        ways.Standard(circuit.SwitchedBy?.Value) is { } contacts ? context.Names.Of(contacts) : ""
                    )
                ),
                .. ways.Droppers()
                    .Select(instance =>
                        Row.Of(
                            context.Names.Of(instance),
                            context.In(instance.Fit.Purpose),
                            context.DroppedBy(instance.Fit.DroppedBy),
                            ways.Outputs(instance)
                        )
                    ),
            ]
        );
    }

    private static string Pulses(SiteWords words, TestPulses pulses) =>
        pulses switch
        {
            TestPulses.Needed => words.PulsesFromBox,
            TestPulses.Own => words.PulsesOwn,
            _ => words.PulsesNone,
        };
}
