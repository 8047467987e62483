using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;
using static Configurator.Core.Documents.CautionTopic;

namespace Configurator.Core.Documents;

/// <summary>Which cautions stand in a document: those of its work, and those of what is fitted.</summary>
internal static class Cautions
{
    public static ImmutableArray<string> Wiring(SiteWords words) =>
        Of(words, CautionTopic.Wiring, Pelv, ExtraSupply, WashDown, Dielectric, Change);

    public static ImmutableArray<string> Safety(SiteWords words) => Of(words, Performance);

    public static ImmutableArray<string> Timing(SiteWords words) => Of(words, Measurement, Restart, Change);

    public static ImmutableArray<string> Hygiene(SiteWords words) => Of(words, Chemicals, WashDown, Governs);

    public static ImmutableArray<string> Program(SiteWords words) =>
        Of(words, Forcing, Unattended, SafetyCopies, Substitutes, Change);

    public static ImmutableArray<string> Watching(SiteWords words) => Of(words, ReadsOnly, FromAfar, NetworkAccess);

    /// <summary>Those of washing, and those that something fitted or used calls for.</summary>
    public static ImmutableArray<string> Sanitation(SiteWords words, FittedMachine fitted) =>
        Of(
            words,
            [
                CautionTopic.Energy,
                StoredEnergy,
                Restart,
                Electricity,
                Chemicals,
                SlipperyFloor,
                Jets,
                Governs,
                .. HotRinse(fitted),
                .. SanitationFacts.Hazards(fitted).Select(TopicOf),
                .. SanitationFacts.Agents(fitted).SelectMany(agent => TopicsOf(agent.Kind)),
            ]
        );

    private static ImmutableArray<CautionTopic> HotRinse(FittedMachine fitted) =>
        SanitationFacts.RinsesHot(fitted) ? [HotWater] : [];

    private static CautionTopic TopicOf(Hazard hazard) =>
        hazard switch
        {
            Hazard.HotSurface => HotSurface,
            Hazard.HotWater => HotWater,
            Hazard.CrushingHead => CrushingHead,
            Hazard.StoredAir => StoredAir,
            Hazard.Nitrogen => CautionTopic.Nitrogen,
            Hazard.Laser => CautionTopic.Laser,
            Hazard.Ultraviolet => CautionTopic.Ultraviolet,
            Hazard.Peroxide => Peroxide,
            Hazard.CleaningCircuit => CleaningCircuit,
            Hazard.Blades => Blades,
            _ => BrokenGlass,
        };

    private static IEnumerable<CautionTopic> TopicsOf(AgentKind agent) =>
        agent switch
        {
            AgentKind.ChlorinatedAlkaline => [Caustic, Chlorine],
            AgentKind.Caustic => [Caustic],
            AgentKind.Acid => [Acid],
            AgentKind.Hypochlorite => [Chlorine],
            AgentKind.Peracetic => [Peracetic],
            AgentKind.HotWater => [HotWater],
            _ => [],
        };

    /// <summary>In the order of topics, each once.</summary>
    private static ImmutableArray<string> Of(SiteWords words, params IReadOnlyCollection<CautionTopic> topics) =>
        [.. CautionTable.Lines.Where(line => topics.Contains(line.Topic)).Select(line => line.In(words))];
}
