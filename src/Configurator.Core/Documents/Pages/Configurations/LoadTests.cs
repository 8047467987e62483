using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Tests of motors and heaters before they are switched on for the first time.</summary>
/// <remarks>Source: IEC 60204-1 clauses 18.3 (insulation resistance) and 18.6 (functional tests), from memory;
/// resistance of heaters is common practice, no source.</remarks>
internal static class LoadTests
{
    private const string HeatingLetters = "EB";

    public static ImmutableArray<AcceptanceTest> Of(ConfigurationContext context) =>
        [
            .. context
                .Fitted.Cabled.Select(pair => pair.Instance)
                .SelectMany(instance =>
                    instance.Device.Kind == DeviceKind.Motor ? Motor(context, instance)
                    : instance.Device.Letters == HeatingLetters && instance.Device.Connection == ConnectionKind.Wired
                        ? Heater(context, instance)
                    : []
                ),
        ];

    private static IEnumerable<AcceptanceTest> Motor(ConfigurationContext context, FitInstance motor)
    {
        var words = context.Words;
        return
        [
            new(Name(context, motor), words.MeasureInsulation, words.InsulationExpected, "IEC 60204-1 18.3"),
            new(Name(context, motor), words.LookRotation, context.In(motor.Fit.Purpose), Feeder(context, motor)),
        ];
    }

    private static IEnumerable<AcceptanceTest> Heater(ConfigurationContext context, FitInstance heater)
    {
        var words = context.Words;
        return
        [
            new(Name(context, heater), words.MeasureHeater, words.HeaterExpected, words.AsDataSheet),
            new(Name(context, heater), words.MeasureInsulation, words.InsulationExpected, "IEC 60204-1 18.3"),
            new(Name(context, heater), words.LookHeating, words.HeatingExpected, Feeder(context, heater)),
        ];
    }

    private static string Feeder(ConfigurationContext context, FitInstance load) =>
        new BoxWays(context).FeederOf(load) is { } feeder ? context.Names.Of(feeder) : "";

    private static string Name(ConfigurationContext context, FitInstance instance) =>
        $"{context.Names.Of(instance)} {context.Names.TerminalsOf(instance)}";
}
