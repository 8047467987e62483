using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Tests of motors and heaters before they are switched on for the first time.</summary>
/// <remarks>Source: IEC 60204-1 clauses 18.3 (insulation resistance) and 18.6 (functional tests), from memory;
/// resistance of heaters worked by hand: in a star each phase is U²/P and two of them lie between lines, in a delta
/// each branch is 3U²/P and one lies beside two, so that both show 2U²/P.</remarks>
internal static class LoadTests
{
    private const string HeatingLetters = "EB";

    /// <summary>A phase and its return.</summary>
    private const int SinglePhase = 2;

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
        var hasDrive = new BoxWays(context).FeederOf(motor) is { Device.Kind: DeviceKind.Drive };
        return
        [
            Insulation(context, motor),
            new(
                Name(context, motor),
                hasDrive ? words.LookRotationAtDrive : words.LookRotation,
                $"{words.DirectionByArrow}; {context.In(motor.Fit.Purpose)}",
                Feeder(context, motor)
            ),
        ];
    }

    private static IEnumerable<AcceptanceTest> Heater(ConfigurationContext context, FitInstance heater)
    {
        var words = context.Words;
        var hasPhases = PowerCores.Of(heater.Device).Phases.Length > SinglePhase;
        return
        [
            new(
                Name(context, heater),
                hasPhases ? words.MeasureHeaterPhases : words.MeasureHeater,
                hasPhases ? words.HeaterPhasesExpected : words.HeaterExpected,
                words.AsDataSheet
            ),
            Insulation(context, heater),
            new(
                Name(context, heater),
                words.LookHeating,
                hasPhases ? words.HeatingPhasesExpected : words.HeatingExpected,
                Feeder(context, heater)
            ),
        ];
    }

    /// <summary>Only phases get the test voltage; whatever shares their cable stays off.</summary>
    private static AcceptanceTest Insulation(ConfigurationContext context, FitInstance load)
    {
        var (words, cores) = (context.Words, PowerCores.Of(load.Device));
        var joined = cores.Phases.IsEmpty ? words.PowerConductors : string.Join(", ", cores.Phases);
        var others = cores.Others.IsEmpty ? "" : $"; {string.Join(", ", cores.Others)}: {words.StaysOff}";
        return new(
            Name(context, load),
            $"{joined} {words.MeasureInsulation}{others}",
            words.InsulationExpected,
            "IEC 60204-1 18.3"
        );
    }

    private static string Feeder(ConfigurationContext context, FitInstance load) =>
        new BoxWays(context).FeederOf(load) is { } feeder ? context.Names.Of(feeder) : "";

    private static string Name(ConfigurationContext context, FitInstance instance) =>
        $"{context.Names.Of(instance)} {context.Names.TerminalsOf(instance)}";
}
