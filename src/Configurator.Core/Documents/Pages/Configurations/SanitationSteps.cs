using System.Collections.Immutable;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What every step asks for on this machine, before what options add.</summary>
/// <remarks>Source: reference table of cleaning sequences: university food-safety text and public sanitation guides,
/// corroborated.</remarks>
internal static class SanitationSteps
{
    public static ImmutableArray<string> Lines(ConfigurationContext context, CleaningStep step) =>
        [
            .. step switch
            {
                CleaningStep.RunOut => [context.Words.RunOut],
                CleaningStep.Park => BarsIn(context),
                < CleaningStep.DryCleanAndSecure => [],
                CleaningStep.DryCleanAndSecure => DryClean(context),
                CleaningStep.PreRinse => PreRinse(context),
                CleaningStep.FoamAndScrub => Foam(context),
                CleaningStep.Rinse => [context.Words.RinseOff, context.Words.AlkaliOut],
                CleaningStep.Inspect => [context.Words.LookAndSwab],
                CleaningStep.Sanitize =>
                [
                    .. Agents(context, step, context.Words.SanitizeWith),
                    context.Words.ContactTime,
                ],
                _ => DryAndRelease(context),
            },
        ];

    private static IEnumerable<string> BarsIn(ConfigurationContext context) =>
        SanitationLists.Items(context, care => care.Bars).IsEmpty ? [] : [context.Words.BarsIn];

    private static IEnumerable<string> DryClean(ConfigurationContext context)
    {
        var words = context.Words;
        yield return words.LockAll;
        yield return words.TryIt;
        yield return words.OpenNow;
        if (SanitationFacts.Has(context.Fitted, Hazard.HotSurface))
        {
            yield return words.CoolBeforeHand;
        }

        if (SanitationFacts.Has(context.Fitted, Hazard.Peroxide))
        {
            yield return words.MistFirst;
        }

        yield return words.DryFirst;
        yield return words.CoverNow;
    }

    private static IEnumerable<string> PreRinse(ConfigurationContext context)
    {
        var words = context.Words;
        var box = context.Engineered.Machine.Control.Box.Station.Area;
        if (SanitationFacts.Has(context.Fitted, Hazard.HotSurface))
        {
            yield return words.NeverWaterOnHot;
        }

        if (SanitationFacts.RinsesHot(context.Fitted))
        {
            yield return words.HotWaterGear;
        }

        foreach (var group in ByWash(context, box))
        {
            yield return group.Key switch
            {
                WashMethod.Dry => words.KeepDry(Names(context, group)),
                WashMethod.Rinse => words.RinseLow(Names(context, group)),
                WashMethod.Foam => words.RinseWith(Names(context, group)),
                _ => words.HotLance(Names(context, group)),
            };
        }

        yield return words.JetsOff;
        if (SanitationFacts.WashOf(context.Fitted, box) != WashMethod.Dry)
        {
            yield return words.BoxInWashedArea(context.In(box.Title));
        }
    }

    private static IEnumerable<string> Foam(ConfigurationContext context) =>
        [
            .. AgentDayLine.Of(context),
            .. Agents(context, CleaningStep.FoamAndScrub, context.Words.FoamWith),
            context.Words.ScrubIt,
        ];

    private static IEnumerable<string> DryAndRelease(ConfigurationContext context)
    {
        var words = context.Words;
        return [words.DrainAndWipe, words.Refit, $"{words.DryingWait}: ______ min ({words.SetByPlant})."];
    }

    /// <summary>Areas in which the same agents are left, with those agents; then what must not be used there.</summary>
    private static IEnumerable<string> Agents(
        ConfigurationContext context,
        CleaningStep step,
        Func<string, string> order
    )
    {
        var fates = AgentFates
            .Of(context.Fitted)
            .Where(fate => fate.Agent.Step == step)
            .GroupBy(fate => fate.Area.Id.Value)
            .Select(area =>
                (
                    area.First().Area,
                    Left: Joined("; ", area.Where(fate => fate.IsLeft), agent => Used(context, agent)),
                    Lost: Joined(", ", area.Where(fate => !fate.IsLeft), agent => context.In(agent.Title))
                )
            );
        foreach (var same in fates.GroupBy(fate => (fate.Left, fate.Lost)))
        {
            var names = Names(context, same.Select(fate => fate.Area));
            var use = same.Key.Left.Length > 0 ? $"{order(names)} {same.Key.Left}." : context.Words.NoAgentLeft(names);
            yield return use + (same.Key.Lost.Length > 0 ? $" {context.Words.NeverHere(same.Key.Lost)}" : "");
        }
    }

    private static string Joined(string between, IEnumerable<AgentFate> fates, Func<Agent, string> name) =>
        string.Join(between, fates.Select(fate => name(fate.Agent)));

    private static string Used(ConfigurationContext context, Agent agent) =>
        $"{context.In(agent.Title)} ({AgentFates.Print(context, agent)})";

    /// <summary>Where the area of the box is rinsed at low pressure, its own line says how.</summary>
    private static IEnumerable<IGrouping<WashMethod, Area>> ByWash(ConfigurationContext context, Area box) =>
        context
            .Engineered.Machine.Areas.Select(area => (Area: area, Wash: SanitationFacts.WashOf(context.Fitted, area)))
            .Where(pair => pair.Wash != WashMethod.Rinse || pair.Area.Id.Value != box.Id.Value)
            .GroupBy(pair => pair.Wash, pair => pair.Area)
            .OrderByDescending(group => group.Key);

    private static string Names(ConfigurationContext context, IEnumerable<Area> areas) =>
        string.Join(", ", areas.Select(area => context.In(area.Title)));
}
