using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Up to which strength, heat and time the resistance ratings are taken to hold.</summary>
internal static class AgentStrengths
{
    public const string Source =
        "university food-safety text and public sanitation guides: foam 5 to 15 min, water 49 to 60 degC, corroborated; quat 400 ppm, chlorine 200 ppm, peracetic acid 200 ppm, alkali and acid 5 percent: common label values, common practice";

    private const int ContactMinutesMax = 15;
    private const int CelsiusMax = 60;
    private const int HotWaterCelsiusMax = 80;

    /// <summary>In percent.</summary>
    private static Rational StrengthMax(AgentKind kind) =>
        kind switch
        {
            AgentKind.Quat => new Rational(4, 100),
            AgentKind.Hypochlorite or AgentKind.Peracetic => new Rational(2, 100),
            _ => 5,
        };

    /// <summary>What of it is beyond, in words; empty where nothing is.</summary>
    public static IEnumerable<string> Beyond(Agent agent)
    {
        if (agent.Concentration is { } strength && strength.InBase > StrengthMax(agent.Kind))
        {
            yield return $"{strength} is more than {StrengthMax(agent.Kind).ToString(3)} percent";
        }

        var celsius = agent.Kind == AgentKind.HotWater ? HotWaterCelsiusMax : CelsiusMax;
        if (agent.Temperature.InBase > celsius)
        {
            yield return FormattableString.Invariant($"{agent.Temperature} is hotter than {celsius} degC");
        }

        if (agent.Contact is { } contact && contact.InBase > ContactMinutesMax * 60_000)
        {
            yield return FormattableString.Invariant($"{contact} is longer than {ContactMinutesMax} min");
        }
    }
}
