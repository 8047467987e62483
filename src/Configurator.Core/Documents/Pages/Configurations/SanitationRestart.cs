using System.Collections.Immutable;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>From the wash to production: own locks off, power, air, what is tried with the bars in, bars out, the
/// empty run, and only then gases and media.</summary>
/// <remarks>Source: 29 CFR 1910.147(e): tools counted, people clear, then release; the order after it: common
/// practice, no source.</remarks>
internal static class SanitationRestart
{
    public static IEnumerable<string> Lines(ConfigurationContext context)
    {
        var words = context.Words;
        return
        [
            words.GuardsBack,
            words.UnlockLast(Joined(SanitationFacts.LockedLonger(context.Fitted).Select(words.OfEnergy))),
            .. If(Locks(context, Energy.Electricity), words.MainsOn),
            .. SanitationLists.Items(context, care => care.PowerOn),
            .. If(Locks(context, Energy.WorkingAir), words.AirOn),
            .. SanitationLists.Items(context, care => care.Restart),
            .. BarsOut(context),
            words.StartEmpty,
            .. SanitationLists.Items(context, care => care.FirstRun),
            .. SanitationLists.Items(context, care => care.Media),
            words.ScrapFirst,
        ];
    }

    private static ImmutableArray<string> BarsOut(ConfigurationContext context)
    {
        var bars = SanitationLists.Items(context, care => care.Bars);
        return If(!bars.IsEmpty, context.Words.BarsOut(Joined(bars)));
    }

    private static bool Locks(ConfigurationContext context, Energy energy) =>
        SanitationFacts.Energies(context.Fitted).Any(care => care.Energy == energy && care.State == EnergyState.Locked);

    private static ImmutableArray<string> If(bool holds, string line) => holds ? [line] : [];

    private static string Joined(IEnumerable<string> names) => string.Join(", ", names);
}
